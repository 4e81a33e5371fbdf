// states: which load is fed in which state of key, engine and gear, as the solved network has it.
#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "cli/load.hpp"
#include "cli/page.hpp"
#include "cli/run.hpp"
#include "quantity/print.hpp"
#include "systems/wiring/states.hpp"

namespace sw::cli {
namespace {

using Json = nlohmann::ordered_json;

/// A fed wire can burn, a fed coil strikes, a fed pump delivers.
constexpr Caution cautions[] = {Caution::electrical_fire, Caution::high_voltage, Caution::fuel_fire};

struct Column {
  const wiring::CarState* state;
  wiring::StateRun run;
  std::vector<wiring::FedBack> back;
};

std::vector<Column> columns_of(const wiring::Model& m) {
  std::vector<Column> all;
  for (auto& s : wiring::states()) {
    auto run = wiring::run_state(m, s.bits);
    auto back = run.usable() ? wiring::fed_back(m, run) : std::vector<wiring::FedBack>{};
    all.push_back({&s, std::move(run), std::move(back)});
  }
  return all;
}

constexpr char backwards = '<', wrong = '!';

std::string volts(double v) {
  if (v < wiring::shown_v) return "-";
  const std::string tenths = std::to_string(std::lround(10 * v));
  return (tenths.size() > 1 ? tenths.substr(0, tenths.size() - 1) : "0") + "." + tenths.back();
}

bool asked_otherwise(const wiring::Model& m, const Column& c, std::size_t load) {
  return std::ranges::any_of(wiring::demands(), [&](const wiring::Demand& d) {
    return d.state->bits == c.state->bits && d.load == m.loads[load].wire.place && !d.holds(m, c.run, load);
  });
}

/// Four columns and one for the mark.
std::string cell(const wiring::Model& m, const Column& c, std::size_t load) {
  if (!c.run.usable()) return "   ? ";
  const bool back = std::ranges::any_of(c.back, [&](auto& b) { return b.load == load; });
  const double v = c.run.volts_at(m, load);
  const char mark = asked_otherwise(m, c, load) ? wrong : back ? backwards : ' ';
  return pad_left(volts(v), 4) + mark;
}

std::string names(const wiring::Model& m, const std::vector<std::size_t>& loads) {
  std::string all;
  for (auto l : loads) all += (all.empty() ? "" : ", ") + clean(m.loads[l].wire.place);
  return all;
}

/// What the marks say, in words: what is not as it must be, and what is fed backwards through what.
void tell_marks(const wiring::Model& m, const std::vector<Column>& columns, Page& page) {
  for (std::size_t i = 0; i < columns.size(); ++i) {
    auto& c = columns[i];
    if (!c.run.usable()) continue;
    const auto say = [&](std::size_t load, const std::string& rest) {
      page.text(std::to_string(i + 1) + "  " + clean(m.loads[load].wire.place) + ": " + rest, 2, 3);
    };
    for (std::size_t l = 0; l < m.loads.size(); ++l)
      for (auto& d : wiring::demands()) {
        if (d.state->bits != c.state->bits || d.load != m.loads[l].wire.place || d.holds(m, c.run, l)) continue;
        say(l, harm(d.fed ? "must be fed here" : "must be dead here") + "; " + std::string(d.fix_hint));
      }
    for (auto& back : c.back) {
      const double v = c.run.volts_at(m, back.load);
      const std::string so = v >= wiring::works_from_v(m, m.loads[back.load]) ? "and works by it"
                             : v < wiring::dead_below_v(m)                    ? "too little to work by"
                                                                              : "perhaps enough to work by";
      say(back.load, together(volts(v) + " V") + " backwards through " + names(m, back.through) + ", " + so);
    }
  }
}

bool any_mark(const wiring::Model& m, const std::vector<Column>& columns) {
  for (auto& c : columns)
    for (std::size_t l = 0; l < m.loads.size(); ++l)
      if (cell(m, c, l).back() != ' ') return true;
  return false;
}

std::string states_page(const std::string& title, const wiring::Model& m, const std::vector<Column>& columns,
                        const Look& look) {
  Page page(look);
  page.text(strong("Who is fed when") + "  " + clean(title));
  page.text(
      faint("volts at each load in each state, the network solved; a charged battery, a machine that gives what "
            "is asked, the starter drawing where its solenoid is fed"));
  page.space();
  for (std::size_t i = 0; i < columns.size(); ++i)
    page.text(std::to_string(i + 1) + "  " + std::string(columns[i].state->told), 2);
  page.space();
  int widest = 4;
  for (auto& l : m.loads) widest = std::max(widest, seen(l.wire.place));
  std::string head = pad("", widest + 1);
  for (std::size_t i = 0; i < columns.size(); ++i) head += pad_left(std::to_string(i + 1), i ? 5 : 4);
  page.line(strong(head));
  for (std::size_t l = 0; l < m.loads.size(); ++l) {
    std::string row = pad(clean(m.loads[l].wire.place), widest + 1);
    for (auto& c : columns) row += cell(m, c, l);
    page.line(row);
  }
  page.space();
  if (any_mark(m, columns)) {
    page.text(faint("! not as it must be   < fed backwards, by no metal of its own"));
    tell_marks(m, columns, page);
    page.space();
  }
  for (auto c : cautions) page.text(std::string(caution_text(c)));
  return page.take();
}

Json states_json(const std::string& title, const wiring::Model& m, const std::vector<Column>& columns) {
  Json out{{"car", title}, {"states", Json::array()}, {"cautions", Json::array()}};
  for (auto c : cautions) out["cautions"].push_back(caution_text(c));
  for (auto& c : columns) {
    Json one{{"state", c.state->told}, {"loads", Json::object()}};
    for (std::size_t l = 0; l < m.loads.size(); ++l)
      one["loads"][m.loads[l].wire.place] =
          c.run.usable() ? Json(print(c.run.volts_at(m, l), kind::voltage, "V", 4)) : Json(nullptr);
    for (auto& back : c.back) {
      Json through = Json::array();
      for (auto l : back.through) through.push_back(m.loads[l].wire.place);
      one["fed_backwards"].push_back({{"load", m.loads[back.load].wire.place}, {"through", std::move(through)}});
    }
    for (std::size_t l = 0; c.run.usable() && l < m.loads.size(); ++l)
      if (asked_otherwise(m, c, l)) one["not_as_it_must_be"].push_back(m.loads[l].wire.place);
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
