// faults: one thing broken at a time, where the current goes instead, and what that does.
#include <nlohmann/json.hpp>

#include "cli/load.hpp"
#include "cli/page.hpp"
#include "cli/run.hpp"
#include "proof/wiring_feeds.hpp"
#include "quantity/print.hpp"
#include "systems/wiring/faults.hpp"

namespace sw::cli {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::string_view usual_duties[] = {"night-rain", "cold-crank", "parked"};

struct InDuty {
  std::string duty;
  std::vector<wiring::FaultRun> runs;
};

std::vector<InDuty> try_all(const Car& car, const DutySet& set, const std::vector<WiringFeed>& feeds) {
  std::vector<InDuty> all;
  for (auto& f : feeds)
    all.push_back({set.courses[f.duty].key, wiring::try_faults(car.model<wiring::Model>(), f.feed, f.bay_k)});
  return all;
}

/// A wire that burns; a battery that is charged without measure, or its posts handled.
constexpr Caution cautions[] = {Caution::electrical_fire, Caution::battery_gas};

bool burns(const wiring::Happens& h) { return h.what == wiring::Effect::burns; }

void tell(const std::string& duty, const wiring::FaultRun& run, Page& page) {
  std::string all;
  if (!run.solved) all = "the network has no solution";
  for (auto& h : run.happens) {
    const std::string one = burns(h) ? harm(wiring::tell(h)) : wiring::tell(h);
    all += (all.empty() ? "" : "; ") + one;
  }
  page.beside("  " + duty, 16, all.empty() ? faint("nothing changes") : all);
}

std::string faults_page(const std::string& title, const std::vector<InDuty>& all, const Look& look) {
  Page page(look);
  page.text(strong("One fault at a time") + "  " + clean(title));
  page.text(faint("the network solved with each; runs are named as in the build"));
  std::vector<std::string> told;
  for (auto& d : all)
    for (auto& run : d.runs)
      if (std::find(told.begin(), told.end(), run.fault) == told.end()) told.push_back(run.fault);
  for (auto& fault : told) {
    page.space();
    page.text(touch(clean(fault)));
    for (auto& d : all)
      for (auto& run : d.runs)
        if (run.fault == fault) tell(d.duty, run, page);
  }
  page.space();
  for (auto c : cautions) page.text(std::string(caution_text(c)));
  page.text(
      "Told of the network as it is described: metal that nobody named carries nothing here, and does in the car.");
  return page.take();
}

Json faults_json(const std::string& title, const std::vector<InDuty>& all) {
  Json out{{"car", title}, {"faults", Json::array()}, {"cautions", Json::array()}};
  for (auto c : cautions) out["cautions"].push_back(caution_text(c));
  for (auto& d : all)
    for (auto& run : d.runs) {
      Json one{{"fault", run.fault}, {"duty", d.duty}, {"solved", run.solved}, {"happens", Json::array()}};
      for (auto& h : run.happens) {
        const bool volts = h.what > wiring::Effect::drains;
        const std::string unit = volts ? "V" : "A";
        const Kind& k = volts ? kind::voltage : kind::current;
        Json line{{"effect", wiring::effect_names[static_cast<std::size_t>(h.what)]},
                  {"place", h.place},
                  {"was", print(h.was, k, unit, 4)},
                  {"is", print(h.is, k, unit, 4)}};
        if (h.limit) line["limit"] = print(*h.limit, k, unit, 4);
        one["happens"].push_back(std::move(line));
      }
      out["faults"].push_back(std::move(one));
    }
  return out;
}

}  // namespace

int run_faults(const Args& args, Console& console) {
  const bool json = args.has("--json");
  const Loaded loaded = load(args.operands.front(), from_disk());
  if (const int code = tell_faults(loaded, json, console); code != exit_code::good) return code;
  const DutySet& set = *loaded.duties;
  const Car car(loaded.opened.build);
  if (!car.graph().faults.empty()) return own_fault(console, car.graph().faults.front());
  std::vector<bool> wanted(set.courses.size(), false);
  for (auto& duty : args.values("--duty")) {
    const auto at = find_duty(set, duty, console);
    if (!at) return exit_code::bad_input;
    wanted[*at] = true;
  }
  if (args.values("--duty").empty())
    for (std::size_t i = 0; i < set.courses.size(); ++i)
      wanted[i] =
          std::find(std::begin(usual_duties), std::end(usual_duties), set.courses[i].key) != std::end(usual_duties);
  auto feeds = wiring_feeds(car, set, run_duties(car, set, wanted));
  std::erase_if(feeds, [&](auto& f) { return !wanted[f.duty]; });
  if (feeds.empty()) {
    complain(console, "the network cannot be solved in these duties", "streetwright check says what the build lacks");
    return exit_code::unproven;
  }
  const auto all = try_all(car, set, feeds);
  const std::string title = car_title(loaded.opened.build);
  console.out += json ? faults_json(title, all).dump(2, ' ', false, Json::error_handler_t::replace) + "\n"
                      : faults_page(title, all, console.look);
  for (auto& d : all)
    for (auto& run : d.runs)
      if (std::any_of(run.happens.begin(), run.happens.end(), burns)) return exit_code::fails;
  return exit_code::good;
}

}  // namespace sw::cli
