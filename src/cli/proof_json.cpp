#include "cli/proof_json.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <nlohmann/json.hpp>

#include "cli/figures.hpp"
#include "field/measure.hpp"
#include "quantity/print.hpp"
#include "quantity/unit.hpp"

namespace sw::cli {
namespace {

using Json = nlohmann::ordered_json;

/// Twelve digits: more are only the dust of a conversion.
Json number(double x) {
  if (!std::isfinite(x)) return nullptr;
  const std::string text = short_number(x, 12);
  std::from_chars(text.data(), text.data() + text.size(), x);
  return x;
}

/// A unit checked against its kind, with its text; where it does not measure it, the kind's first.
struct Shown {
  Unit unit;
  std::string text;
};
Shown shown_in(const Kind& kind, std::string_view unit) {
  for (auto text : {unit, kind.units.empty() ? std::string_view{} : kind.units[0]}) {
    const auto read = parse_unit_for(text, kind);
    if (auto* found = std::get_if<Unit>(&read)) return {*found, std::string(text)};
  }
  return {Unit{kind.dimension}, "SI"};
}

Json value_in(double si, const Kind& kind, const Shown& in) { return number(in_unit(si, in.unit, kind)); }

Json predicted_json(const Finding& f, const Shown& in) {
  if (!f.predicted || !std::isfinite(*f.predicted)) return nullptr;
  const Span span = *span_of(f);
  auto finite = [&](double x) { return std::isfinite(x) ? x : *f.predicted; };
  return {{"value", value_in(*f.predicted, *f.quantity, in)},
          {"unit", in.text},
          {"low", value_in(finite(span.low), *f.quantity, in)},
          {"high", value_in(finite(span.high), *f.quantity, in)}};
}

Json limit_json(const Finding& f, const Shown& in) {
  if (f.low_limit && f.high_limit)
    return {{"low", value_in(*f.low_limit, *f.quantity, in)},
            {"high", value_in(*f.high_limit, *f.quantity, in)},
            {"unit", in.text}};
  const auto limit = f.low_limit ? f.low_limit : f.high_limit;
  if (f.kind == RequirementKind::rule || !limit) return nullptr;
  return {{"value", value_in(*limit, *f.quantity, in)}, {"unit", in.text}};
}

/// A margin is a difference: of temperatures it has no zero, of wire sizes it is an area.
Json margin_json(const Finding& f) {
  if (!f.margin || !std::isfinite(*f.margin)) return nullptr;
  const Kind& step = step_kind(*f.quantity);
  const Shown in = shown_in(step, f.unit);
  return {{"value", value_in(*f.margin, step, in)}, {"unit", in.text}, {"share", number(f.share())}};
}

Json because_json(const Because& b) {
  const Shown in = shown_in(*b.kind, b.unit);
  return {{"what", b.what},
          {"value", b.text.empty() ? value_in(b.value, *b.kind, in) : Json(b.text)},
          {"unit", b.text.empty() ? Json(in.text) : Json(nullptr)},
          {"evidence", b.evidence ? evidence_words(*b.evidence) : "computed"},
          {"path", b.path},
          {"role", role_names[static_cast<std::size_t>(b.role)]},
          {"weight", b.weight == 0 ? Json(nullptr) : number(b.weight)}};
}

Json to_json(const Finding& f) {
  const Shown in = shown_in(*f.quantity, f.unit);
  Json because = Json::array();
  for (auto& b : f.because) because.push_back(because_json(b));
  Json out = {{"id", f.id},
              {"system", f.system},
              {"duty", f.duty},
              {"place", f.place},
              {"title", f.title},
              {"kind", requirement_kind_names[static_cast<std::size_t>(f.kind)]},
              {"state", state_names[static_cast<std::size_t>(f.state)]},
              {"predicted", predicted_json(f, in)},
              {"limit", limit_json(f, in)},
              {"margin", margin_json(f)},
              {"confidence", f.confidence},
              {"hazard", hazard_names[static_cast<std::size_t>(f.hazard)]},
              {"source", f.source},
              {"formula", f.formula},
              {"caution", f.caution == Caution::none ? Json(nullptr) : Json(caution_text(f.caution))},
              {"because", std::move(because)},
              {"missing", f.missing},
              {"reason", f.reason},
              {"fix_hint", f.fix_hint}};
  if (!f.follows.empty()) out["follows"] = f.follows;
  return out;
}

/// Names of the user's may hold bytes that are no UTF-8: they are replaced, never a reason to end.
std::string text_of(const Json& j) { return j.dump(2, ' ', false, Json::error_handler_t::replace) + "\n"; }

Json fault_json(const Diagnostic& d, const std::vector<std::string>& files) {
  const bool known = d.place.file >= 0 && static_cast<std::size_t>(d.place.file) < files.size();
  return {{"file", known ? Json(files[static_cast<std::size_t>(d.place.file)]) : Json(nullptr)},
          {"line", d.place.known() ? Json(d.place.line) : Json(nullptr)},
          {"column", d.place.known() ? Json(d.place.column) : Json(nullptr)},
          {"path", d.path},
          {"problem", d.problem},
          {"hint", d.hint}};
}

Json of_severity(Severity severity, const Diagnostics& told, const std::vector<std::string>& files) {
  Json all = Json::array();
  for (auto& d : told.all())
    if (d.severity == severity) all.push_back(fault_json(d, files));
  return all;
}

}  // namespace

std::string proof_json(const Proof& proof, std::string_view build, const Diagnostics& told,
                       const std::vector<std::string>& files) {
  Json findings = Json::array(), next = Json::array();
  std::size_t counts[std::size(state_names)] = {};
  for (auto& f : proof.findings) {
    findings.push_back(to_json(f));
    ++counts[static_cast<std::size_t>(f.state)];
  }
  Json summary = Json::object();
  for (std::size_t i = 0; i < std::size(state_names); ++i) summary[std::string(state_names[i])] = counts[i];
  // Of those that hold, the ones that do because nothing flows; the terminal counts them apart.
  summary["idle"] = std::count_if(proof.findings.begin(), proof.findings.end(),
                                  [](auto& f) { return f.state == State::holds && flows_nothing(f); });
  for (auto& n : proof.next)
    next.push_back({{"path", n.path},
                    {"evidence", n.evidence ? name_of(*n.evidence) : "missing"},
                    {"finding", n.finding},
                    {"share", number(n.share)},
                    {"decides", n.decides},
                    {"hazard", hazard_names[static_cast<std::size_t>(n.worst)]}});
  return text_of({{"build", build},
                  {"duties", proof.duties},
                  {"findings", std::move(findings)},
                  {"summary", std::move(summary)},
                  {"next", std::move(next)},
                  {"left_out", proof.left_out},
                  {"warnings", of_severity(Severity::warning, told, files)}});
}

std::string finding_json(const Finding& finding) { return text_of(to_json(finding)); }

std::string faults_json(const Diagnostics& faults, const std::vector<std::string>& files) {
  return text_of({{"faults", of_severity(Severity::fault, faults, files)},
                  {"warnings", of_severity(Severity::warning, faults, files)}});
}

}  // namespace sw::cli
