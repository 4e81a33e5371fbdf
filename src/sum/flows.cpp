// Sums of pipes: friction, local losses, pressure lost, flow.
#include "physics/atmosphere.hpp"
#include "physics/pipe.hpp"
#include "quantity/customary.hpp"
#include "sum/families.hpp"
#include "sum/fluid_args.hpp"

namespace sw {
namespace {

constexpr std::string_view pipe_range =
    "round pipe, steady flow; laminar below Re 2300, turbulent from 4000; relative roughness up to 0.05; a gas where "
    "the drop is small beside its pressure";
constexpr std::string_view pipe_source =
    "Colebrook, J. Inst. Civ. Eng. 11 (1939) 133; Hagen-Poiseuille; White, Fluid Mechanics, ch. 6";
constexpr std::string_view fluid_caution =
    "fuel, brake fluid and hot coolant in a line hurt people and burn: depressurise, protect eyes, follow the maker";

struct FactorIn {
  std::optional<double> reynolds, relative_roughness;
};
struct FactorOut {
  std::optional<double> factor, factor_haaland;
};
constexpr Argument factor_in[] = {
    number<&FactorIn::reynolds>("reynolds", "Reynolds number").above(0, 1e12),
    number<&FactorIn::relative_roughness>("relative_roughness", "roughness over bore").from(0, 1),
};
constexpr Argument factor_out[] = {
    number<&FactorOut::factor>("factor", "Darcy friction factor"),
    number<&FactorOut::factor_haaland>("factor_haaland", "the same by Haaland's explicit formula"),
};

void friction_factor(const FactorIn& in, FactorOut& out, Remarks& say) {
  const auto f = physics::pipe_factor(*in.reynolds, *in.relative_roughness);
  out.factor = f.value;
  if (*in.reynolds >= physics::laminar_end_reynolds)
    out.factor_haaland = physics::haaland_factor(*in.reynolds, *in.relative_roughness);
  if (!f.valid)
    say.outside("between Re 2300 and 4000 flow may be either; up to Re 1e8 and a relative roughness of 0.05");
}

enum class LossKind { sharp_entrance, rounded_entrance, exit, expansion };
struct LossIn {
  std::optional<LossKind> kind;
  std::optional<Length> bore_in, bore_out;
};
struct LossOut {
  std::optional<double> coefficient;
};
constexpr std::string_view loss_choices[] = {"sharp-entrance", "rounded-entrance", "exit", "expansion"};
constexpr Argument loss_in[] = {
    choice<&LossIn::kind>("kind", "kind of change", loss_choices),
    may(quantity<&LossIn::bore_in>("bore_in", "bore before the expansion", kind::length).above(0, 1e4).in("mm")),
    may(quantity<&LossIn::bore_out>("bore_out", "bore after the expansion", kind::length).above(0, 1e4).in("mm")),
};
constexpr Argument loss_out[] = {
    number<&LossOut::coefficient>("coefficient", "loss coefficient on the speed in the smaller bore")};

void local_loss_check(const LossIn& in, Remarks& say) {
  if (!in.kind) return;
  if (*in.kind == LossKind::expansion) {
    say.need("bore_in", "an expansion needs both bores");
    say.need("bore_out", "an expansion needs both bores");
    if (in.bore_in && in.bore_out && in.bore_out->si < in.bore_in->si)
      say.fault("bore_out", "is smaller than bore_in: that is no expansion",
                "exchange them if the flow runs the other way");
    return;
  }
  for (auto key : {"bore_in", "bore_out"})
    if (say.given(key)) say.fault(key, "belongs to an expansion alone", "leave it out");
}

void local_loss(const LossIn& in, LossOut& out, Remarks&) {
  switch (*in.kind) {
    case LossKind::sharp_entrance:
      out.coefficient = physics::loss_sharp_entrance;
      break;
    case LossKind::rounded_entrance:
      out.coefficient = physics::loss_rounded_entrance;
      break;
    case LossKind::exit:
      out.coefficient = physics::loss_exit;
      break;
    case LossKind::expansion:
      out.coefficient = physics::loss_expansion(in.bore_in->si, in.bore_out->si);
      break;
  }
}

enum class RegimeChoice { laminar, turbulent };
constexpr std::string_view regime_choices[] = {"laminar", "turbulent"};

/// What both pipe sums ask for; `flow` and `speed` are read by one, `pressure_drop` by the other.
struct PipeIn {
  AnyFluid fluid;
  std::optional<VolumeFlow> flow;
  std::optional<Speed> speed;
  std::optional<PressureDifference> pressure_drop;
  std::optional<Length> bore, length, roughness;
  std::optional<double> losses;
  std::optional<RegimeChoice> regime;
};
struct PipeOut {
  std::optional<PressureDifference> pressure_drop;
  std::optional<Length> head;
  std::optional<VolumeFlow> flow;
  std::optional<Speed> speed;
  std::optional<double> reynolds, factor;
};
constexpr Argument bore_in = quantity<&PipeIn::bore>("bore", "inside diameter", kind::length).above(0, 1e4).in("mm");
constexpr Argument length_in =
    quantity<&PipeIn::length>("length", "length of the pipe", kind::length).from(0, 1e6).in("m");
constexpr Argument roughness_in = quantity<&PipeIn::roughness>("roughness", "roughness of the wall", kind::length)
                                      .from(0, 100)
                                      .in("mm")
                                      .or_else(0, Source::chosen);
constexpr Argument losses_in =
    number<&PipeIn::losses>("losses", "sum of local loss coefficients").from(0, 1e6).or_else(0, Source::chosen);
constexpr Argument regime_in =
    may(choice<&PipeIn::regime>("regime", "kind of flow, by Reynolds number where left out", regime_choices));
constexpr Argument pipe_loss_in[] = {
    fields_of<&PipeIn::fluid>(),
    quantity<&PipeIn::flow>("flow", "flow by volume", kind::volume_flow).from(0, 1e6).in("m3/s"),
    quantity<&PipeIn::speed>("speed", "mean speed of the fluid", kind::speed).from(0, 1e4).in("m/s"),
    bore_in,
    length_in,
    roughness_in,
    losses_in,
    regime_in};
constexpr Argument pipe_flow_in[] = {
    fields_of<&PipeIn::fluid>(),
    quantity<&PipeIn::pressure_drop>("pressure_drop", "pressure lost along the pipe", kind::pressure_difference)
        .from(0, 1e6)
        .in("kPa"),
    bore_in,
    length_in,
    roughness_in,
    losses_in,
    regime_in};
constexpr Argument flow_out = quantity<&PipeOut::flow>("flow", "flow by volume", kind::volume_flow).in("L/min");
constexpr Argument speed_out = quantity<&PipeOut::speed>("speed", "mean speed", kind::speed).in("m/s");
constexpr Argument reynolds_out = number<&PipeOut::reynolds>("reynolds", "Reynolds number");
constexpr Argument pipe_factor_out = number<&PipeOut::factor>("factor", "Darcy friction factor");
constexpr Argument pipe_loss_out[] = {
    quantity<&PipeOut::pressure_drop>("pressure_drop", "pressure lost", kind::pressure_difference),
    quantity<&PipeOut::head>("head", "the same as a height of the fluid", kind::length).in("m"),
    flow_out,
    speed_out,
    reynolds_out,
    pipe_factor_out};
constexpr Argument pipe_flow_out[] = {flow_out, speed_out, reynolds_out, pipe_factor_out};
constexpr Rule pipe_loss_rules[] = {one_of("flow", "speed")};

/// Laminar friction alone is a matter of viscosity; anything else needs the density too.
bool needs_density(const PipeIn& in, const Remarks& say) {
  return in.regime != RegimeChoice::laminar || say.given("losses") || say.given("kinematic_viscosity");
}
void pipe_loss_check(const PipeIn& in, Remarks& say) {
  check_fluid(in.fluid, {.density = true, .viscosity = true}, say);
}
void pipe_flow_check(const PipeIn& in, Remarks& say) {
  check_fluid(in.fluid, {.density = needs_density(in, say), .viscosity = true}, say);
}

physics::Pipe pipe_of(const PipeIn& in) { return {in.bore->si, in.length->si, in.roughness->si, *in.losses}; }
physics::Regime regime_of(const PipeIn& in) {
  if (!in.regime) return physics::Regime::by_reynolds;
  return *in.regime == RegimeChoice::laminar ? physics::Regime::laminar : physics::Regime::turbulent;
}

void show(const physics::PipeState& s, const PipeIn& in, PipeOut& out, Remarks& say) {
  out.flow = VolumeFlow{s.flow_m3_s};
  out.speed = Speed{s.speed_m_s};
  out.reynolds = s.reynolds;
  if (s.reynolds > 0) out.factor = s.factor;
  if (!s.valid)
    say.outside("between Re 2300 and 4000 flow may be either; up to Re 1e8 and a relative roughness of 0.05");
  if (in.regime == RegimeChoice::laminar && s.reynolds >= physics::turbulent_start_reynolds)
    say.note("taken as laminar as asked; at this Reynolds number flow is usually turbulent");
}

void pipe_loss(const PipeIn& in, PipeOut& out, Remarks& say) {
  const auto f = state_of(in.fluid, say);
  const auto pipe = pipe_of(in);
  const double flow_m3_s = in.flow ? in.flow->si : in.speed->si * physics::pipe_area_m2(pipe.bore_m);
  const auto s = physics::pipe_drop(pipe, {f.density_kg_m3, f.viscosity_pa_s}, flow_m3_s, regime_of(in));
  out.pressure_drop = PressureDifference{s.pressure_drop_pa};
  out.head = Length{s.pressure_drop_pa / (f.density_kg_m3 * standard_gravity_m_s2)};
  show(s, in, out, say);
}

void pipe_flow(const PipeIn& in, PipeOut& out, Remarks& say) {
  const auto f = state_of(in.fluid, say);
  const auto pipe = pipe_of(in);
  if (pipe.length_m == 0 && pipe.losses == 0)
    return say.fault("length", "a pipe without length and losses lets any flow through");
  if (f.density_kg_m3 > 0)
    return show(physics::pipe_flow(pipe, {f.density_kg_m3, f.viscosity_pa_s}, in.pressure_drop->si, regime_of(in)), in,
                out, say);
  const double flow_m3_s = physics::laminar_flow_m3_s(pipe, f.viscosity_pa_s, in.pressure_drop->si);
  out.flow = VolumeFlow{flow_m3_s};
  out.speed = Speed{flow_m3_s / physics::pipe_area_m2(pipe.bore_m)};
}

constexpr Sum sums[] = {
    entry<friction_factor>(
        {.name = "friction-factor",
         .title = "Friction factor of a pipe",
         .inputs = factor_in,
         .outputs = factor_out,
         .range = "laminar below Re 2300; Colebrook Re 4000 to 1e8, relative roughness up to 0.05",
         .source = "Colebrook, J. Inst. Civ. Eng. 11 (1939) 133; Haaland, J. Fluids Eng. 105 (1983) 89"}),
    entry<local_loss, local_loss_check>({.name = "local-loss",
                                         .title = "Loss coefficient of an entrance, exit or expansion",
                                         .inputs = loss_in,
                                         .outputs = loss_out,
                                         .range = "turbulent flow; rounded entrance: radius above 0.2 of the bore; "
                                                  "entrance figures differ by 10 % between books",
                                         .source = "Borda-Carnot; White, Fluid Mechanics, ch. 6; Cengel and Cimbala, "
                                                   "Fluid Mechanics, table 8-4 (from memory)"}),
    entry<pipe_loss, pipe_loss_check>({.name = "pipe-loss",
                                       .title = "Pressure lost along a pipe",
                                       .inputs = pipe_loss_in,
                                       .outputs = pipe_loss_out,
                                       .rules = pipe_loss_rules,
                                       .range = pipe_range,
                                       .source = pipe_source,
                                       .caution = fluid_caution}),
    entry<pipe_flow, pipe_flow_check>({.name = "pipe-flow",
                                       .title = "Flow through a pipe at a pressure drop",
                                       .inputs = pipe_flow_in,
                                       .outputs = pipe_flow_out,
                                       .range = pipe_range,
                                       .source = pipe_source,
                                       .caution = fluid_caution}),
};

}  // namespace

std::span<const Sum> flow_sums() { return sums; }

}  // namespace sw
