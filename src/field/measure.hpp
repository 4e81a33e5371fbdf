#pragma once
// What a field's numbers mean in SI: its range, its default, the half-width of its evidence.
#include "field/field.hpp"

namespace sw {

/// A number in a unit offered for `kind`, as SI, and back. An absolute temperature takes the unit's zero with it.
double to_si(double value, const Kind& kind, std::string_view unit);
double from_si(double si, const Kind& kind, std::string_view unit);
/// A difference of two numbers in that unit, as SI: 2 degF = 1.111… K.
double step_to_si(double step, const Kind& kind, std::string_view unit);
/// The kind of a difference of two values: of a temperature a temperature step, of a gauge pressure a pressure
/// difference, of a wire size an area, otherwise the kind itself.
const Kind& step_kind(const Kind& kind);
/// Whether an SI value lies in the field's range. At a closed end one part in 1e9 is let off, for the conversion.
bool in_range(double si, const FieldInfo& f);
/// Half-width in SI that the field table gives to a value of this evidence; of a curve a share.
double usual_half_width(const FieldInfo& f, Source s, double si);
/// The text is a pure number of the kind: no unit is asked for.
inline bool is_pure(const Kind& kind) { return kind.dimension == Dimension{}; }

}  // namespace sw
