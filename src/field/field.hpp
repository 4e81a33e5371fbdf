#pragma once
// What a field table is. Each input struct is plain: members are std::optional of a quantity, number, enum or text,
// std::optional<Curve>, Named<Struct>, a nested struct or an optional of one. Beside it stands one constexpr table of
// FieldInfo made with the functions below, and the struct says where: `static std::span<const FieldInfo> fields();`.
// Everything that is known of a field is said there once; reader, writer, schema, forms and docs walk it.
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

#include "field/curve.hpp"
#include "field/evidence.hpp"
#include "field/measured_by.hpp"
#include "field/named.hpp"
#include "quantity/kind.hpp"

namespace sw {

enum class FieldType : std::uint8_t {
  quantity,  ///< std::optional<Quantity<…>>
  number,    ///< std::optional<double>: a ratio, share or coefficient; bare or in %
  integer,   ///< std::optional<int>
  yes_no,    ///< std::optional<bool>; written true/false
  choice,    ///< std::optional<enum class>, counted from 0 in the order of `choices`
  text,      ///< std::string (empty = not given)
  names,     ///< std::vector<std::string>
  curve,     ///< std::optional<Curve>
  group,     ///< a nested struct, or std::optional of one
  list,      ///< Named<Struct>
};

/// Allowed values, in the field's own unit (the field's `unit` member), never in SI.
struct Range {
  double low = 0, high = 0;
  bool low_open = false, high_open = false;
  bool set = false;
};

struct FieldInfo;

/// Type-erased access to one member of a struct. Only those that fit the field's type are set.
struct Access {
  const void* (*address)(const void* owner) = nullptr;  ///< of the member itself: tells which field a member is
  std::optional<double> (*get)(const void* owner) =
      nullptr;  ///< quantity (SI), number, integer, yes_no, choice (index)
  void (*set)(void* owner, std::optional<double>) = nullptr;
  const std::string* (*text)(const void* owner) = nullptr;
  std::string* (*text_to)(void* owner) = nullptr;
  const std::vector<std::string>* (*names)(const void* owner) = nullptr;
  std::vector<std::string>* (*names_to)(void* owner) = nullptr;
  const std::optional<Curve>* (*curve)(const void* owner) = nullptr;
  std::optional<Curve>* (*curve_to)(void* owner) = nullptr;
  std::span<const FieldInfo> (*children)() = nullptr;  ///< of a group or of each entry of a list
  const void* (*child)(const void* owner) = nullptr;   ///< group: null where an optional one is not there
  void* (*child_to)(void* owner) = nullptr;            ///< group: made where it is not there
  bool optional = false;                               ///< group: may be absent as a whole
  std::size_t (*count)(const void* owner) = nullptr;   ///< list
  std::string_view (*name)(const void* owner, std::size_t) = nullptr;
  const void* (*item)(const void* owner, std::size_t) = nullptr;
  void* (*item_to)(void* owner, std::size_t) = nullptr;
  void* (*add)(void* owner, std::string_view name) = nullptr;  ///< list: the new entry, or the one of that name
};

struct FieldInfo {
  std::string_view key;    ///< `core_width`
  std::string_view label;  ///< "core width"
  FieldType type = FieldType::number;
  Access access;
  const Kind* kind = &kind::number;    ///< of the value; of a curve's y
  const Kind* kind_x = &kind::number;  ///< of a curve's x
  std::string_view unit;               ///< in which range and default stand; default: the kind's first
  std::string_view unit_x;
  std::string_view doc;                      ///< one sentence
  std::string_view source;                   ///< of range or default: a standard, or "common practice"
  Range range;                               ///< of value, or of a curve's y
  std::optional<double> fallback;            ///< default in `unit` (choice: index; yes_no: 0, 1)
  Source fallback_source = Source::typical;  ///< evidence the default carries
  Spreads spreads = usual_spreads;
  std::span<const std::string_view> choices;
  std::string_view part;  ///< group: shelf category that can fill it (`alternator`), or empty
  bool harm = false;      ///< decides a harm rule: has no typical value
  bool grows = false;     ///< a lever that is only offered upwards: more output, more flow
  bool lever = false;     ///< a part or setting the shop can choose: offered as a remedy
  Station station = Station::inherited;  ///< where on the car it is found
  Tool tool = Tool::by_kind;             ///< with what it is measured

  // Each returns a changed copy, so that a table reads as one sentence a field.
  constexpr FieldInfo in(std::string_view u) const {
    auto f = *this;
    f.unit = u;
    return f;
  }
  constexpr FieldInfo in(std::string_view ux, std::string_view uy) const {
    auto f = *this;
    f.unit_x = ux;
    f.unit = uy;
    return f;
  }
  constexpr FieldInfo from(double low, double high) const {
    auto f = *this;
    f.range = {low, high, false, false, true};
    return f;
  }
  constexpr FieldInfo above(double low, double high) const {
    auto f = *this;
    f.range = {low, high, true, false, true};
    return f;
  }
  /// A stand-in where nobody gave a figure; carries evidence `typical` unless said otherwise.
  constexpr FieldInfo or_else(double value, Source s = Source::typical) const {
    auto f = *this;
    f.fallback = value;
    f.fallback_source = s;
    return f;
  }
  constexpr FieldInfo spread(Source s, Spread w) const {
    auto f = *this;
    f.spreads[static_cast<std::size_t>(s)] = w;
    return f;
  }
  /// The same half-width whatever the evidence, `chosen` and `solved` apart.
  constexpr FieldInfo spread(Spread w) const {
    auto f = *this;
    for (Source s : {Source::stated, Source::measured, Source::data_sheet, Source::typical, Source::road_test})
      f.spreads[static_cast<std::size_t>(s)] = w;
    return f;
  }
  constexpr FieldInfo says(std::string_view sentence) const {
    auto f = *this;
    f.doc = sentence;
    return f;
  }
  constexpr FieldInfo after(std::string_view s) const {
    auto f = *this;
    f.source = s;
    return f;
  }
  constexpr FieldInfo shelf(std::string_view category) const {
    auto f = *this;
    f.part = category;
    return f;
  }
  constexpr FieldInfo may_grow() const {
    auto f = *this;
    f.lever = f.grows = true;
    return f;
  }
  constexpr FieldInfo may_change() const {
    auto f = *this;
    f.lever = true;
    return f;
  }
  constexpr FieldInfo found(Station where) const {
    auto f = *this;
    f.station = where;
    return f;
  }
  constexpr FieldInfo with(Tool t) const {
    auto f = *this;
    f.tool = t;
    return f;
  }
  constexpr FieldInfo decides_harm() const {
    auto f = *this;
    f.harm = true;
    return f;
  }
};

/// The unit a field's range, default and reports stand in.
constexpr std::string_view unit_of(const FieldInfo& f) {
  return f.unit.empty() && !f.kind->units.empty() ? f.kind->units[0] : f.unit;
}

namespace field_detail {

template <class>
struct Member;
template <class C, class T>
struct Member<T C::*> {
  using Owner = C;
  using Type = T;
};
template <auto M>
using OwnerOf = typename Member<decltype(M)>::Owner;
template <auto M>
using TypeOf = typename Member<decltype(M)>::Type;
template <auto M>
const TypeOf<M>& at(const void* owner) {
  return static_cast<const OwnerOf<M>*>(owner)->*M;
}
template <auto M>
TypeOf<M>& at(void* owner) {
  return static_cast<OwnerOf<M>*>(owner)->*M;
}

template <class T>
struct IsOptional : std::false_type {};
template <class T>
struct IsOptional<std::optional<T>> : std::true_type {};
template <class T>
struct IsNamed : std::false_type {};
template <class T>
struct IsNamed<Named<T>> : std::true_type {
  using Item = T;
};

template <class V>
constexpr double to_number(const V& v) {
  if constexpr (requires { v.si; })
    return v.si;
  else
    return static_cast<double>(v);
}
template <class V>
constexpr V from_number(double x) {
  if constexpr (requires(V v) { v.si; })
    return V{x};
  else
    return static_cast<V>(x);
}

template <auto M>
const void* address(const void* owner) {
  return &at<M>(owner);
}

template <auto M>
constexpr Access scalar_access() {
  using V = typename TypeOf<M>::value_type;
  Access a;
  a.address = address<M>;
  a.get = [](const void* o) -> std::optional<double> {
    auto& m = at<M>(o);
    if (!m) return std::nullopt;
    return to_number(*m);
  };
  a.set = [](void* o, std::optional<double> x) {
    auto& m = at<M>(o);
    if (x)
      m = from_number<V>(*x);
    else
      m.reset();
  };
  return a;
}

}  // namespace field_detail

/// A figure with a dimension. Refuses at compile time a kind that does not fit the member.
template <auto M>
consteval FieldInfo quantity(std::string_view key, std::string_view label, const Kind& k) {
  using Q = typename field_detail::TypeOf<M>::value_type;
  if (Q::dimension != k.dimension || Q::reference != k.reference) throw "the kind does not fit the member";
  FieldInfo f{
      .key = key, .label = label, .type = FieldType::quantity, .access = field_detail::scalar_access<M>(), .kind = &k};
  if (k.reference == Reference::absolute && k.dimension == dim::temperature)
    f.spreads = {{{.absolute = 2}, {.absolute = 1}, {.absolute = 2}, {.absolute = 5}, {}, {}, {.absolute = 1}}};
  return f;
}
template <auto M>
consteval FieldInfo number(std::string_view key, std::string_view label) {
  return {.key = key, .label = label, .type = FieldType::number, .access = field_detail::scalar_access<M>()};
}
/// A count: exact whatever its evidence.
template <auto M>
consteval FieldInfo integer(std::string_view key, std::string_view label) {
  return {.key = key,
          .label = label,
          .type = FieldType::integer,
          .access = field_detail::scalar_access<M>(),
          .spreads = {}};
}
template <auto M>
consteval FieldInfo yes_no(std::string_view key, std::string_view label) {
  return {
      .key = key, .label = label, .type = FieldType::yes_no, .access = field_detail::scalar_access<M>(), .spreads = {}};
}
template <auto M>
consteval FieldInfo choice(std::string_view key, std::string_view label, std::span<const std::string_view> choices) {
  return {.key = key,
          .label = label,
          .type = FieldType::choice,
          .access = field_detail::scalar_access<M>(),
          .spreads = {},
          .choices = choices};
}
template <auto M>
consteval FieldInfo text(std::string_view key, std::string_view label) {
  Access a;
  a.address = field_detail::address<M>;
  a.text = [](const void* o) -> const std::string* { return &field_detail::at<M>(o); };
  a.text_to = [](void* o) -> std::string* { return &field_detail::at<M>(o); };
  return {.key = key, .label = label, .type = FieldType::text, .access = a};
}
template <auto M>
consteval FieldInfo names(std::string_view key, std::string_view label) {
  Access a;
  a.address = field_detail::address<M>;
  a.names = [](const void* o) -> const std::vector<std::string>* { return &field_detail::at<M>(o); };
  a.names_to = [](void* o) -> std::vector<std::string>* { return &field_detail::at<M>(o); };
  return {.key = key, .label = label, .type = FieldType::names, .access = a};
}
template <auto M>
consteval FieldInfo curve(std::string_view key, std::string_view label, const Kind& x, const Kind& y) {
  Access a;
  a.address = field_detail::address<M>;
  a.curve = [](const void* o) -> const std::optional<Curve>* { return &field_detail::at<M>(o); };
  a.curve_to = [](void* o) -> std::optional<Curve>* { return &field_detail::at<M>(o); };
  return {.key = key, .label = label, .type = FieldType::curve, .access = a, .kind = &y, .kind_x = &x};
}
template <auto M>
consteval FieldInfo group(std::string_view key, std::string_view label) {
  using T = field_detail::TypeOf<M>;
  Access a;
  if constexpr (field_detail::IsOptional<T>::value) {
    a.children = &T::value_type::fields;
    a.child = [](const void* o) -> const void* {
      auto& m = field_detail::at<M>(o);
      return m ? &*m : nullptr;
    };
    a.child_to = [](void* o) -> void* {
      auto& m = field_detail::at<M>(o);
      if (!m) m.emplace();
      return &*m;
    };
    a.optional = true;
  } else {
    a.children = &T::fields;
    a.child = [](const void* o) -> const void* { return &field_detail::at<M>(o); };
    a.child_to = [](void* o) -> void* { return &field_detail::at<M>(o); };
  }
  return {.key = key, .label = label, .type = FieldType::group, .access = a};
}
template <auto M>
consteval FieldInfo list(std::string_view key, std::string_view label) {
  using Item = typename field_detail::IsNamed<field_detail::TypeOf<M>>::Item;
  Access a;
  a.children = &Item::fields;
  a.count = [](const void* o) { return field_detail::at<M>(o).entries.size(); };
  a.name = [](const void* o, std::size_t i) -> std::string_view { return field_detail::at<M>(o).entries[i].first; };
  a.item = [](const void* o, std::size_t i) -> const void* { return &field_detail::at<M>(o).entries[i].second; };
  a.item_to = [](void* o, std::size_t i) -> void* { return &field_detail::at<M>(o).entries[i].second; };
  a.add = [](void* o, std::string_view name) -> void* {
    auto& entries = field_detail::at<M>(o).entries;
    for (auto& e : entries)
      if (e.first == name) return &e.second;
    return &entries.emplace_back(std::string(name), Item{}).second;
  };
  return {.key = key, .label = label, .type = FieldType::list, .access = a};
}

/// Members of an aggregate, for the check that a table has as many rows as its struct has members:
/// `static_assert(std::size(table) == member_count<Radiator>());`
struct AnyMember {
  template <class T>
  operator T() const;
};
template <class T, class... A>
consteval std::size_t member_count() {
  if constexpr (requires { T{A{}..., AnyMember{}}; })
    return member_count<T, A..., AnyMember>();
  else
    return sizeof...(A);
}

}  // namespace sw
