// One finding opened: cause above effect, one figure a line.
#include <algorithm>
#include <cmath>

#include "cli/figures.hpp"
#include "cli/page.hpp"
#include "cli/report.hpp"
#include "cli/ruler.hpp"
#include "field/measure.hpp"
#include "field/tree.hpp"
#include "quantity/print.hpp"

namespace sw::cli {
namespace {

constexpr int margin = 2, most_label = 44;

struct Row {
  std::string what, value, mark, effect, after;
};

/// Figures aligned at their right edge, so that a column of them can be read down.
void table(Page& page, const std::vector<Row>& rows) {
  int what = 0, value = 0;
  for (auto& r : rows)
    what = std::max(what, std::min(seen(r.what), most_label)), value = std::max(value, seen(r.value));
  what = std::min(what, std::max(12, page.look().width / 2 - margin));
  value = std::min(value, page.look().width / 3);
  for (auto& r : rows) {
    const std::string tail =
        r.mark + (r.effect.empty() ? "" : "  " + r.effect) + (r.after.empty() ? "" : "  " + touch(r.after));
    if (seen(r.what) <= what && seen(r.value) <= value)
      page.text(pad(r.what, what + 2) + pad_left(r.value, value) + tail, margin, what + 2);
    else  // too long for the columns: in words
      page.text(r.what + ": " + r.value + tail, margin, 2);
  }
}

std::string state_line(const Finding& f) {
  const std::string state(state_names[static_cast<std::size_t>(f.state)]);
  std::string text = f.state == State::fails ? harm(state) : strong(state);
  if (f.margin)
    text += ", " + together(print(std::abs(*f.margin), step_kind(*f.quantity), f.unit, 3)) +
            (*f.margin < 0 ? " beyond the limit" : " inside the limit") + ", " +
            together(short_number(100 * std::abs(f.share()), 2) + " %") + " of its scale";
  return text;
}

void section(Page& page, std::string_view heading, const std::vector<Row>& rows) {
  if (rows.empty()) return;
  page.space();
  page.line(strong(heading));
  table(page, rows);
}

/// What the weight of a line comes to: of a rule, which has no scale to speak of, nothing.
std::string effect(const Because& b, const Finding& f) {
  if (b.weight == 0 || !f.margin) return {};
  const std::string size = print(std::abs(b.weight) * f.scale, step_kind(*f.quantity), f.unit, 2);
  if (b.role == Role::doubt) return together("± " + size);
  return together((b.weight < 0 ? "-" : "+") + size);
}

/// The inputs of one role, the weightiest first.
std::vector<Row> inputs(const Finding& f, Role role, EvidenceMarks& marks) {
  std::vector<const Because*> lines;
  for (auto& b : f.because)
    if (b.role == role) lines.push_back(&b);
  std::stable_sort(lines.begin(), lines.end(),
                   [](auto* a, auto* b) { return std::abs(a->weight) > std::abs(b->weight); });
  std::vector<Row> rows;
  for (auto* b : lines)
    rows.push_back({clean(b->what), because_value(*b), marks.mark(*b), effect(*b, f), clean(b->path)});
  return rows;
}

void field(Page& page, std::string_view name, const std::string& text) {
  static constexpr int columns = 12;
  if (!text.empty()) page.text(faint(pad(name, columns)) + text, margin, columns);
}

}  // namespace

std::string because_page(const Finding& f, const Look& look) {
  Page page(look);
  EvidenceMarks marks;
  const int reach = ruler_reach(look.width);
  page.text(strong(clean(f.title)));
  page.text(touch(clean(f.id)));
  page.space();
  const std::string drawn = draw_ruler(ruler_mark(f), reach, look.unicode);
  page.beside(std::string(margin, ' ') + (f.state == State::fails ? harm(drawn) : drawn), margin + 2 * reach + 3,
              state_line(f), 2);

  std::vector<Row> chain;
  for (auto& b : f.because)
    if (!b.is_input()) chain.push_back({clean(b.what), because_value(b), {}, {}, {}});
  if (f.predicted) chain.push_back({strong("so it comes to"), strong(with_doubt(f)), {}, {}, {}});
  section(page, "FROM CAUSE TO EFFECT", chain);
  section(page, "TAKEN AS", inputs(f, Role::given, marks));
  section(page, "TO CHOOSE, AND WHAT A TENTH MORE DOES FOR THE MARGIN", inputs(f, Role::choice, marks));
  section(page, "IN DOUBT, AND WHAT THE DOUBT OF EACH MAKES OF THE MARGIN", inputs(f, Role::doubt, marks));
  page.space();
  for (auto& path : f.missing) field(page, "needs", touch(clean(path)));
  field(page, "found", clean(f.reason));
  field(page, "limit", limit_words(f));
  field(page, "formula", clean(f.formula));
  field(page, "source", clean(f.source));
  field(page, "looked at", clean(when(f)));
  field(page, "confidence", clean(f.confidence));
  if (f.state != State::holds) field(page, "change", touch(clean(f.fix_hint)));
  if (f.caution != Caution::none)
    field(page, "care", harm(caution_name(f.caution)) + ": " + std::string(caution_text(f.caution)));
  if (const auto legend = marks.legend(); !legend.empty()) {
    page.space();
    page.text(faint("Where a figure came from: " + legend), 0, 2);
  }
  return page.take();
}

const Finding* find_finding(const Proof& proof, std::string_view id, std::string& hint) {
  std::vector<const Finding*> begins;
  std::vector<std::string_view> names;
  for (auto& f : proof.findings) {
    if (f.id == id) return &f;
    if (f.id.starts_with(id)) begins.push_back(&f);
    names.push_back(f.id);
  }
  if (begins.size() == 1 && !id.empty()) return begins.front();
  hint.clear();
  if (begins.empty()) {
    const auto near = nearest(id, names);
    hint = near.empty() ? "check with --all tells the ids" : "did you mean " + std::string(near) + "?";
  } else {
    static constexpr std::size_t most = 6;
    for (std::size_t i = 0; i < std::min(begins.size(), most); ++i)
      hint += (i == 0 ? "which of " : ", ") + begins[i]->id;
    hint += begins.size() > most ? ", ... is meant?" : " is meant?";
  }
  return nullptr;
}

}  // namespace sw::cli
