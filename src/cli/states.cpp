// states: which load is fed in which state of key, engine and gear, as the solved network has it.
#include <nlohmann/json.hpp>

#include "cli/load.hpp"
#include "cli/page.hpp"
#include "cli/run.hpp"
#include "quantity/print.hpp"
#include "systems/wiring/states.hpp"

namespace sw::cli {
namespace {

using Json = nlohmann::ordered_json;

struct Column {
  const wiring::CarState* state;
  wiring::StateRun run;
};

std::vector<Column> columns_of(const wiring::Model& m) {
  std::vector<Column> all;
  for (auto& s : wiring::states()) all.push_back({&s, wiring::run_state(m, s.bits)});
  return all;
}

std::string volts(double v) { return v < 0.05 ? "-" : short_number(v, 3); }

std::string states_page(const std::string& title, const wiring::Model& m, const std::vector<Column>& columns,
                        const Look& look) {
  Page page(look);
  page.text(strong("Who is fed when") + "  " + clean(title));
  page.text(faint("volts at each load in each state, the network solved; a rested battery, a machine that gives"));
  page.space();
  for (std::size_t i = 0; i < columns.size(); ++i)
    page.text(std::to_string(i + 1) + "  " + std::string(columns[i].state->told), 2);
  page.space();
  int widest = 4;
  for (auto& l : m.loads) widest = std::max(widest, seen(l.wire.place));
  std::string head = pad("", widest);
  for (std::size_t i = 0; i < columns.size(); ++i) head += pad_left(std::to_string(i + 1), 6);
  page.line(strong(head));
  for (std::size_t l = 0; l < m.loads.size(); ++l) {
    std::string row = pad(clean(m.loads[l].wire.place), widest);
    for (auto& c : columns) row += pad_left(c.run.usable() ? volts(c.run.volts_at(m, l)) : "?", 6);
    page.line(row);
  }
  page.space();
  page.text(std::string(caution_text(Caution::electrical_fire)));
  return page.take();
}

Json states_json(const std::string& title, const wiring::Model& m, const std::vector<Column>& columns) {
  Json out{{"car", title}, {"states", Json::array()}, {"caution", caution_text(Caution::electrical_fire)}};
  for (auto& c : columns) {
    Json one{{"state", c.state->told}, {"loads", Json::object()}};
    for (std::size_t l = 0; l < m.loads.size(); ++l)
      one["loads"][m.loads[l].wire.place] =
          c.run.usable() ? Json(print(c.run.volts_at(m, l), kind::voltage, "V", 4)) : Json(nullptr);
    out["states"].push_back(std::move(one));
  }
  return out;
}

}  // namespace

int run_states(const Args& args, Console& console) {
  const bool json = args.has("--json");
  const Loaded loaded = load(args.operands.front(), from_disk());
  if (const int code = tell_faults(loaded, json, console); code != exit_code::good) return code;
  const Car car(loaded.opened.build);
  if (!car.graph().faults.empty()) return own_fault(console, car.graph().faults.front());
  for (auto& s : car.systems())
    if (s.key == wiring::System::key && !s.missing.empty()) {
      complain(console, "the wiring lacks " + s.missing.front(), "streetwright check lists all that is missing");
      return exit_code::unproven;
    }
  const auto& m = car.model<wiring::Model>();
  const auto columns = columns_of(m);
  const std::string title = car_title(loaded.opened.build);
  console.out += json ? states_json(title, m, columns).dump(2, ' ', false, Json::error_handler_t::replace) + "\n"
                      : states_page(title, m, columns, console.look);
  return exit_code::good;
}

}  // namespace sw::cli
