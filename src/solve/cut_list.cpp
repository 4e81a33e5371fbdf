// Which tube is cut from which stick on hand, so that the least length of stick is opened.
#include "physics/cutting.hpp"
#include "physics/tube_fitting.hpp"
#include "solve/lines.hpp"
#include "solve/list.hpp"

namespace sw {
namespace {

using tubes::StockModel;
using tubes::TubeModel;

const char* const no_sticks = "tubes.stock: sticks on hand";
const char* const no_tubes = "tubes.tube.NAME.cut_length: or points, from which it comes";

const tubes::Model& lines_of(const Car& car) { return model_of<tubes::System>(car); }

std::optional<double> length_of(const TubeModel& t) { return t.cut_m ? t.cut_m : t.to_cut_m(); }
std::vector<std::string> lacking(const TubeModel& t) {
  std::vector<std::string> missing;
  if (!t.outside_m) missing.push_back(t.outside_path);
  if (!t.wall_m) missing.push_back(t.wall_path);
  if (!t.material) missing.push_back(t.material_path);
  return missing;
}
std::string kind_words(const TubeModel& t) {
  return in_inches(*t.outside_m) + " x " + in_inches(*t.wall_m) + " " +
         std::string(tubes::material_names[static_cast<std::size_t>(*t.material)]);
}
bool same_tube(const TubeModel& a, const TubeModel& b) {
  return a.material == b.material && physics::same_size(*a.outside_m, *b.outside_m) &&
         physics::same_size(*a.wall_m, *b.wall_m);
}
bool fits(const StockModel& s, const TubeModel& t) {
  return s.missing.empty() && s.material == t.material && physics::same_size(s.outside_m, *t.outside_m) &&
         physics::same_size(s.wall_m, *t.wall_m);
}

/// Tubes of one kind, and the sticks they may come from.
class Cutting {
 public:
  Cutting(const tubes::Model& m, std::vector<const TubeModel*> tubes) : m_(m), tubes_(std::move(tubes)) {
    for (auto& s : m.stock)
      if (fits(s, *tubes_.front())) {
        from_.push_back(&s);
        kinds_.push_back({s.length_m, s.count});
      }
    for (auto* t : tubes_) lengths_.push_back(*length_of(*t));
  }

  void plan(ByLine& out) {
    const std::string kind = kind_words(*tubes_.front());
    if (from_.empty()) return out.refuse("there is no stick of " + kind + " on hand");
    bool gave_up = false;
    const auto plan = physics::cut_plan(lengths_, kinds_, m_.kerf_m, gave_up);
    if (!plan) return out.refuse(why_not(kind, gave_up));
    std::vector<std::string> stick;
    std::vector<int> of_kind(kinds_.size(), 0);
    for (auto k : plan->opened) stick.push_back(from_[k]->name + " " + std::to_string(++of_kind[k]));
    for (std::size_t i = 0; i < tubes_.size(); ++i)
      out.set({tubes_[i]->path + ".stick", 0, std::nullopt, stick[plan->stick_of[i]]});
    double waste = plan->opened_length;
    for (std::size_t k = 0; k < stick.size(); ++k) waste -= tell(*plan, k, stick[k], out);
    out.add(kind + ": " + std::to_string(tubes_.size()) + (tubes_.size() == 1 ? " tube" : " tubes") + " from " +
            std::to_string(stick.size()) + (stick.size() == 1 ? " stick" : " sticks") + ", " + in_inches(waste) +
            " left over and cut away; " +
            (plan->proved ? "no other way opens less." : "the best way found, not proved to be the best there is."));
  }

 private:
  /// What comes from one stick; the length of its pieces.
  double tell(const physics::CutPlan& plan, std::size_t k, const std::string& stick, ByLine& out) const {
    std::string words;
    double pieces = 0;
    int count = 0;
    for (std::size_t i = 0; i < tubes_.size(); ++i) {
      if (plan.stick_of[i] != k) continue;
      words += (words.empty() ? "" : ", ") + tubes_[i]->place + " " + in_inches(lengths_[i]);
      pieces += lengths_[i];
      ++count;
    }
    const double length = kinds_[plan.opened[k]].length;
    const double left = std::max(0.0, length - pieces - count * m_.kerf_m);
    out.because(stick, words + "; " + in_inches(left) + " left of " + in_inches(length));
    return pieces;
  }
  std::string why_not(const std::string& kind, bool gave_up) const {
    const double longest_piece = *std::max_element(lengths_.begin(), lengths_.end());
    double all = 0, on_hand = 0, longest = 0;
    for (double l : lengths_) all += l;
    for (auto& k : kinds_) {
      on_hand += k.length * k.count;
      if (k.count > 0) longest = std::max(longest, k.length);
    }
    if (longest_piece > longest)
      return "a tube of " + in_inches(longest_piece) + " is longer than any stick of " + kind + ", " +
             in_inches(longest) + ": a longer one, or a union where it can be reached";
    return "the sticks of " + kind + " on hand, " + in_inches(on_hand) + " together, do not give " + in_inches(all) +
           " in these pieces" + (gave_up ? ", as far as was searched" : "") + ": another stick";
  }

  const tubes::Model& m_;
  std::vector<const TubeModel*> tubes_;
  std::vector<const StockModel*> from_;
  std::vector<physics::StickKind> kinds_;
  std::vector<double> lengths_;
};

Solution solve(const Build& build, const DutySet&) {
  const Car car(build);
  const tubes::Model& m = lines_of(car);
  ByLine out;
  std::vector<std::vector<const TubeModel*>> groups;
  for (auto& t : m.tubes) {
    if (!length_of(t)) continue;
    const auto missing = lacking(t);
    out.lacks(missing);
    if (!missing.empty()) continue;
    out.concerns(t);
    auto group = std::find_if(groups.begin(), groups.end(), [&](auto& g) { return same_tube(*g.front(), t); });
    if (group == groups.end()) group = groups.insert(groups.end(), std::vector<const TubeModel*>{});
    group->push_back(&t);
  }
  for (auto& s : m.stock) out.lacks(s.missing);
  if (m.stock.empty()) out.lacks({no_sticks});
  if (groups.empty()) out.lacks({no_tubes});
  if (!m.stock.empty())
    for (auto& g : groups) Cutting(m, g).plan(out);
  return out.take();
}

std::vector<std::string> needs(const Build& build) {
  const Car car(build);
  const tubes::Model& m = lines_of(car);
  std::vector<std::string> missing;
  if (m.stock.empty()) missing.push_back(no_sticks);
  if (std::none_of(m.tubes.begin(), m.tubes.end(), [](auto& t) { return length_of(t).has_value(); }))
    missing.push_back(no_tubes);
  return missing;
}

}  // namespace

const Solver cut_list{
    .key = "cut-list",
    .title = "tubes cut from the sticks on hand",
    .judged_by = "tubes.sticks",
    .formula =
        "of all ways to cut the tubes of one material, outside and wall from their sticks, each cut "
        "taking its width: the least length of sticks opened, then the fewest sticks; tried by branch "
        "and bound to the end, or said where that was too much",
    .source = "the cutting-stock problem, any text on operations research",
    .solve = solve,
    .needs = needs};

}  // namespace sw
