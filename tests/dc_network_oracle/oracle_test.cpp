// Random car networks against another engine's answers; README.md beside this file says which, and how near they must
// lie.
#include <gtest/gtest.h>

#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <random>
#include <sstream>

#include "physics/dc_network.hpp"

namespace sw::physics::dc {
namespace {

using nlohmann::json;

constexpr double agree_v = 1e-6;

const std::filesystem::path& folder() {
  static const std::filesystem::path here = STREETWRIGHT_SOURCE_DIR "/tests/dc_network_oracle";
  return here;
}

/// A battery, a tree of runs with chords, loads of every law, at times an alternator that senses elsewhere, a second
/// battery behind a diode, switches that are open.
json random_network(std::mt19937& engine) {
  const auto u = [&](double low, double high) { return std::uniform_real_distribution<>(low, high)(engine); };
  const auto chance = [&](double share) { return u(0, 1) < share; };
  const std::size_t count = 4 + engine() % 14;
  json net{{"nodes", count}, {"branches", json::array()}};
  const auto add = [&](json branch) { net["branches"].push_back(std::move(branch)); };
  const auto run = [&](std::size_t from, std::size_t to) {
    add({{"from", from}, {"to", to}, {"law", "resistor"}, {"ohm", std::pow(10, u(-3, -1.4))}});
  };
  add({{"from", 0}, {"to", 1}, {"law", "battery"}, {"emf", u(11.5, 13)}, {"ohm", u(0.004, 0.03)}});
  // Live nodes hang on the battery's post, grounds on ground, each on one of its like.
  std::vector<std::size_t> live = {1}, grounds = {0};
  for (std::size_t k = 2; k < count; ++k) {
    auto& like = chance(0.35) ? grounds : live;
    run(like[engine() % like.size()], k);
    like.push_back(k);
  }
  for (auto chords = engine() % 4; chords > 0; --chords) {
    auto& like = chance(0.5) ? grounds : live;
    const std::size_t a = like[engine() % like.size()], b = like[engine() % like.size()];
    if (a != b) run(a, b);
  }
  for (auto loads = 1 + engine() % 8; loads > 0; --loads) {
    const std::size_t a = live[engine() % live.size()], b = grounds[engine() % grounds.size()];
    json load{{"from", a}, {"to", b}, {"series", chance(0.7) ? u(0.01, 0.2) : 0.0}, {"closed", chance(0.85)}};
    switch (engine() % 5) {
      case 0:
        load.update({{"law", "power"}, {"exponent", 0.55}, {"amps", u(1, 12)}, {"volts", 13.5}});
        break;
      case 1:
        load.update({{"law", "power"}, {"exponent", 1.5}, {"amps", u(3, 30)}, {"volts", 13.5}});
        break;
      case 2:
        load.update({{"law", "watts"}, {"watts", u(10, 100)}});
        break;
      case 3:
        load.update({{"law", "amps"}, {"amps", u(0.02, 8)}});
        break;
      default:
        // Blocking from ground, or passing between live nodes: the other way round it would short the car.
        load.update({{"law", "diode"}, {"ohm", u(0.005, 0.5)}});
        load["to"] = live[engine() % live.size()];
        if (chance(0.3)) load["from"] = b;
        if (load["from"] == load["to"]) continue;
    }
    add(load);
  }
  if (chance(0.5))
    add({{"from", grounds[engine() % grounds.size()]},
         {"to", live[engine() % live.size()]},
         {"sense", 1},
         {"law", "machine"},
         {"set", u(13.8, 14.6)},
         {"greatest", u(20, 120)}});
  return net;
}

Branch branch_of(const json& j) {
  Branch b{.from = j["from"].get<NodeIndex>(), .to = j["to"].get<NodeIndex>()};
  b.closed = j.value("closed", true);
  b.series_ohm = j.value("series", 0.0);
  const std::string law = j["law"];
  if (law == "resistor") b.law = Resistor{j["ohm"]};
  if (law == "battery") b.law = Battery{j["emf"], j["ohm"]};
  if (law == "power") b.law = PowerLaw{j["amps"], j["volts"], j["exponent"]};
  if (law == "watts") b.law = ConstantPower{j["watts"], 9};
  if (law == "amps") b.law = ConstantCurrent{j["amps"], 6};
  if (law == "diode") b.law = Diode{0.75, j["ohm"], 1e-6};
  if (law == "machine") {
    b.law = RegulatedSource{j["set"], j["greatest"]};
    b.sense_plus = j["sense"].get<NodeIndex>();
  }
  return b;
}

Network network_of(const json& j) {
  Network net;
  for (std::size_t k = 1; k < j["nodes"].get<std::size_t>(); ++k) net.add_node();
  for (auto& b : j["branches"]) net.add(branch_of(b));
  return net;
}

/// Every element clear of where our laws round a corner, or leave the formula the other engine was given.
bool comparable(const json& j, const Solution& s) {
  for (std::size_t i = 0; i < j["branches"].size(); ++i) {
    auto& b = j["branches"][i];
    if (!b.value("closed", true)) continue;
    const std::string law = b["law"];
    const double v = s.load_v[i], a = s.current_a[i];
    if (law == "watts" && v < 9.6) return false;
    if (law == "amps" && v < 6.1) return false;
    if (law == "power" && std::abs(v) < 0.3) return false;
    if (law == "machine") {
      const double greatest = b["greatest"];
      const double share = (a + 1e-5 * v) / greatest;
      if ((share > 1e-9 && share < 0.02) || (share > 0.98 && share < 1 - 1e-9) || v < -25) return false;
    }
  }
  return true;
}

std::string node(std::size_t k) { return k == 0 ? "0" : "n" + std::to_string(k); }

std::string number(double x) {
  std::ostringstream text;
  text.precision(12);
  text << x;
  return text.str();
}

/// A network in the other engine's terms.
std::string netlist(const json& j) {
  std::string out = "car network\n.options reltol=1e-9 abstol=1e-10 vntol=1e-10 gmin=1e-15 itl1=1000\n";
  int i = 0;
  for (auto& b : j["branches"]) {
    const std::string name = std::to_string(++i), law = b["law"], from = node(b["from"].get<std::size_t>()),
                      to = node(b["to"].get<std::size_t>());
    if (!b.value("closed", true)) continue;
    std::string at = from;
    if (const double series = b.value("series", 0.0); series > 0) {
      at = "m" + name;
      out += "RS" + name + " " + from + " " + at + " " + number(series) + "\n";
    }
    const std::string v = "V(" + at + "," + to + ")";
    if (law == "resistor") {
      out += "R" + name + " " + at + " " + to + " " + number(b["ohm"]) + "\n";
    } else if (law == "battery") {
      out += "V" + name + " e" + name + " " + at + " DC " + number(b["emf"]) + "\n";
      out += "R" + name + " e" + name + " " + to + " " + number(b["ohm"]) + "\n";
    } else {
      std::string current;
      if (law == "power")
        current = "sgn(" + v + ")*" + number(b["amps"]) + "*pow(abs(" + v + ")/" + number(b["volts"]) + "+1e-12," +
                  number(b["exponent"]) + ")";
      else if (law == "watts")
        current =
            v + " > 9 ? " + number(b["watts"]) + "/" + v + " : " + number(b["watts"].get<double>() / 81) + "*" + v;
      else if (law == "amps")
        current = v + " > 6 ? " + number(b["amps"]) + " : " + number(b["amps"].get<double>() / 6) + "*" + v;
      else if (law == "diode")
        current = number(0.05 / b["ohm"].get<double>()) + "*(" + v + " > 3 ? (" + v + "-0.75)/0.05 : ln(1+exp((" + v +
                  "-0.75)/0.05))) + 1e-6*" + v;
      else
        current = "min(max((" + number(b["set"]) + "-V(" + node(b["sense"].get<std::size_t>()) + "))/0.005,0)," +
                  number(b["greatest"]) + ") + 1e-5*" + v;
      out += "B" + name + " " + at + " " + to + " I = " + current + "\n";
    }
  }
  for (std::size_t k = 1; k < j["nodes"].get<std::size_t>(); ++k)
    out += "RL" + std::to_string(k) + " " + node(k) + " 0 1e9\n";
  return out + ".op\n.end\n";
}

bool engine_is_here() { return std::system("ngspice --version >/dev/null 2>&1") == 0; }

std::string output_of(const std::string& command) {
  std::string text;
  FILE* pipe = popen(command.c_str(), "r");
  char part[4096];
  while (pipe && fgets(part, sizeof part, pipe)) text += part;
  if (pipe) pclose(pipe);
  return text;
}

/// The other engine's potential of each node; null where it found none.
json ask_engine(const json& network, const std::string& base) {
  const std::string file = base + ".cir";
  std::string text = netlist(network), print = "print";
  for (std::size_t k = 1; k < network["nodes"].get<std::size_t>(); ++k) print += " v(" + node(k) + ")";
  text.replace(text.find(".op\n"), 4, ".control\nset numdgt=12\nop\n" + print + "\n.endc\n");
  std::ofstream(file) << text;
  std::istringstream lines(output_of("ngspice -b '" + file + "' 2>/dev/null"));
  std::filesystem::remove(file);
  json volts = json::array({0.0});
  for (std::string line; std::getline(lines, line);)
    if (const auto eq = line.find(" = "); line.starts_with("v(n") && eq != std::string::npos)
      volts.push_back(std::stod(line.substr(eq + 3)));
  return volts.size() == network["nodes"].get<std::size_t>() ? volts : json(nullptr);
}

std::vector<json> ask_all(const json& networks) {
  const std::string base =
      (std::filesystem::temp_directory_path() / ("dc_oracle_" + std::to_string(std::random_device{}()))).string();
  std::vector<json> answers;
  for (auto& n : networks) answers.push_back(ask_engine(n, base));
  return answers;
}

json drawn(unsigned seed, int count) {
  std::mt19937 engine(seed);
  json networks = json::array();
  for (int i = 0; i < count; ++i) networks.push_back(random_network(engine));
  return networks;
}

void compare(const json& networks, const std::vector<json>& answers, std::size_t least_compared) {
  ASSERT_EQ(networks.size(), answers.size());
  std::size_t compared = 0, unanswered = 0;
  double worst = 0;
  for (std::size_t i = 0; i < networks.size(); ++i) {
    Solution s;
    const auto& summary = solve(network_of(networks[i]), s);
    ASSERT_TRUE(summary.usable()) << "network " << i << ": " << summary.reason << "\n" << networks[i].dump();
    if (answers[i].is_null()) {
      ++unanswered;
      continue;
    }
    if (!comparable(networks[i], s)) continue;
    ++compared;
    for (std::size_t k = 0; k < answers[i].size(); ++k) {
      const double off = std::abs(s.node_v[k] - answers[i][k].get<double>());
      EXPECT_LT(off, agree_v) << "network " << i << ", node " << k << ": " << networks[i].dump();
      worst = std::max(worst, off);
    }
  }
  std::printf("%zu of %zu networks compared, %zu without the other engine's answer, worst node %.2g V apart\n",
              compared, networks.size(), unanswered, worst);
  EXPECT_GE(compared, least_compared);
}

TEST(DcNetworkOracle, AgreesWithTheAnswersKeptHere) {
  const auto file = folder() / "answers.json";
  if (std::getenv("STREETWRIGHT_WRITE_ORACLE")) {
    const json networks = drawn(7, 36);
    const auto answers = ask_all(networks);
    std::ofstream out(file);
    out << "{\"engine\": \"ngspice 39 (Debian 12)\",\n\"note\": \"Computed by the engine named here from the networks "
           "beside; see README.md.\",\n\"cases\": [\n";
    for (std::size_t i = 0; i < networks.size(); ++i)
      out << json{{"network", networks[i]}, {"volts", answers[i]}}.dump() << (i + 1 < networks.size() ? ",\n" : "\n");
    out << "]}\n";
  }
  const json kept = json::parse(std::ifstream(file));
  json networks = json::array();
  std::vector<json> answers;
  for (auto& c : kept["cases"]) networks.push_back(c["network"]), answers.push_back(c["volts"]);
  compare(networks, answers, 20);
}

TEST(DcNetworkOracle, AgreesOnNewNetworks) {
  if (!engine_is_here())
    GTEST_SKIP() << "ngspice is not here (apt install ngspice): compared with the answers kept there alone";
  const unsigned seed = std::random_device{}();
  std::printf("seed %u\n", seed);
  const json networks = drawn(seed, 200);
  compare(networks, ask_all(networks), 80);
}

}  // namespace
}  // namespace sw::physics::dc
