// The walk as a text to fill in, in the syntax of a build.
#include <set>

#include "field/measure.hpp"
#include "field/words.hpp"
#include "survey/walk.hpp"

namespace sw {
namespace {

/// A comment of one line: what the user wrote may hold no line break.
std::string comment(std::string_view text) {
  std::string line = "# ";
  for (char c : text) line += static_cast<unsigned char>(c) < 0x20 ? ' ' : c;
  return line + "\n";
}

std::string quoted(const Kind& kind) {
  return is_pure(kind) ? std::string(kind.example) : "\"" + std::string(kind.example) + "\"";
}

/// What may stand between the quotation marks, or in their place.
std::string may_stand(const FieldInfo& f) {
  switch (f.type) {
    case FieldType::choice:
      return one_of(f.choices);
    case FieldType::yes_no:
      return "true or false";
    case FieldType::integer:
      return f.range.set ? range_words(f) : "a whole number";
    case FieldType::curve:
      return "rows such as [[" + quoted(*f.kind_x) + ", " + quoted(*f.kind) + "], …]";
    case FieldType::text:
    case FieldType::names:
      return "words";
    default:
      if (f.range.set) return range_words(f);
      return is_pure(*f.kind) ? "a number such as " + std::string(f.kind->example) : such_as(*f.kind);
  }
}

std::string how(const ToMeasure& t) {
  const std::string within = to_within(*t.field);
  return std::string(name_of(t.tool)) + (within.empty() ? "" : ", to ± " + within);
}

void figure(const ToMeasure& t, std::string& out) {
  out += "\n" + comment(std::string(t.field->label) + ": " + std::string(t.field->doc));
  out += comment(how(t) + (t.now.empty() ? "" : "; now " + t.now) +
                 (t.worst == Hazard::harm && t.decides ? "; harm" : ""));
  out += t.path + " = \"\"  " + comment(may_stand(*t.field));
}

}  // namespace

std::string form_of(const Walk& walk, const std::string& title, const std::string& build) {
  std::string out = comment("Survey of " + (title.empty() ? build : title + ", " + build));
  out += comment("Fill in what was measured, with its unit; what was not stays empty. Where a reading is finer or");
  out += comment("coarser than told: { value = \"26 in\", plus_minus = \"1/4 in\" }. Read back with");
  out += comment("streetwright survey " + build + " --read THIS-FILE");
  out += "\nnote = \"\"  # who measured, and when: kept beside each figure\n";
  out += "\n" + comment(proof_limits());
  std::set<Caution> decided;
  for (auto& t : walk.figures) decided.insert(t.caution);
  for (Caution c : decided)
    if (c != Caution::none) out += comment("CARE " + std::string(caution_text(c)));
  Station at = Station::inherited;
  for (auto& t : walk.figures) {
    if (t.station != at) {
      at = t.station;
      out += "\n" + comment("---- " + std::string(name_of(at)) + " ----");
      for (Caution c : cautions_at(at)) out += comment("CARE " + std::string(caution_text(c)));
    }
    figure(t, out);
  }
  return out;
}

}  // namespace sw
