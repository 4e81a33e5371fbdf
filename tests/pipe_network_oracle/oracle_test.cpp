// Random pipe networks against another engine's answers; README.md beside this file says which, and how near they must
// lie.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <random>

#include "physics/pipe_network.hpp"

namespace sw::physics::pipes {
namespace {

using nlohmann::json;

const std::filesystem::path& folder() {
  static const std::filesystem::path here = STREETWRIGHT_SOURCE_DIR "/tests/pipe_network_oracle";
  return here;
}

constexpr double agree_share = 0.02;  ///< of the greatest flow and pressure: the two friction factors differ so far

/// A tank, a tree of pipes from it with chords, things drawn, another tank at times, a pump and check valves at times.
json random_network(std::mt19937& engine) {
  const auto u = [&](double low, double high) { return std::uniform_real_distribution<>(low, high)(engine); };
  const auto pipe = [&](std::size_t from, std::size_t to) {
    return json{{"from", from},
                {"to", to},
                {"bore", u(0.004, 0.016)},
                {"length", u(0.3, 8)},
                {"roughness", u(1e-6, 2e-5)},
                {"losses", u(0, 8)},
                {"oneWay", false}};
  };
  json net{{"density", u(700, 1000)}, {"viscosity", u(0.3e-3, 1.2e-3)}, {"pumps", json::array()}};
  const std::size_t count = 3 + engine() % 8;
  net["nodes"].push_back({{"given", u(0, 5e4)}});
  for (std::size_t k = 1; k < count; ++k) {
    json node = json::object();
    if (k == count - 1)
      node["given"] = u(2e5, 5e5);
    else if (u(0, 1) < 0.4)
      node["drawn"] = u(1e-5, 1e-4);
    net["nodes"].push_back(node);
    net["pipes"].push_back(pipe(engine() % k, k));
  }
  for (auto chords = engine() % 4; chords > 0; --chords) {
    const std::size_t a = engine() % count, b = engine() % count;
    if (a != b) net["pipes"].push_back(pipe(a, b));
  }
  if (u(0, 1) < 0.5) {
    const double free = u(1e-4, 4e-4), shut = u(6e5, 9e5);
    json curve = json::array();
    for (int k = 0; k < 4; ++k) curve.push_back({shut * (1 - k / 3.0), free * k / 3.0});
    net["pumps"].push_back({{"from", 0}, {"to", 1}, {"curve", curve}});
  }
  if (u(0, 1) < 0.3) {
    json check = pipe(1, count - 1);
    check["oneWay"] = true;
    net["pipes"].push_back(check);
  }
  return net;
}

Network network_of(const json& j) {
  Network net{{j["density"], j["viscosity"]}, {}, {}};
  for (auto& n : j["nodes"]) {
    Node node{{}, n.value("drawn", 0.0)};
    if (n.contains("given")) node.given_pa = n["given"].get<double>();
    net.add_node(node);
  }
  for (auto& p : j["pipes"])
    net.add(p["from"], p["to"], Line{{{p["bore"], p["length"], p["roughness"], p["losses"]}}, 0, p["oneWay"]});
  for (auto& p : j["pumps"]) {
    Curve c;
    for (auto at = p["curve"].rbegin(); at != p["curve"].rend(); ++at) {
      c.x.push_back((*at)[0]);
      c.y.push_back((*at)[1]);
    }
    net.add(p["from"], p["to"], PumpElement{*PumpCurve::make(c)});
  }
  return net;
}

/// Every pipe of our solution clear of the range in which the two friction laws part.
bool comparable(const Network& net, const Solution& s) {
  for (std::size_t i = 0; i < net.elements.size(); ++i)
    if (auto* l = std::get_if<Line>(&net.elements[i].law)) {
      const double re = pipe_drop_smooth(l->pieces[0], net.fluid, s.flow_m3_s[i]).reynolds;
      if (re > 1900 && re < 4200) return false;
    }
  // A pump runs on its line only between no flow and free flow; beyond, the two continue it differently.
  for (std::size_t i = 0; i < net.elements.size(); ++i)
    if (auto* p = std::get_if<PumpElement>(&net.elements[i].law))
      if (s.flow_m3_s[i] < 1e-6 || s.flow_m3_s[i] > p->curve.free_m3_s()) return false;
  return true;
}

/// Greatest differences as shares of the network's own greatest; what was compared.
struct Difference {
  double flow = 0, pressure = 0;
};
Difference difference(const Network& net, const Solution& s, const json& theirs) {
  double flow = 0, pressure = 0;
  for (double q : s.flow_m3_s) flow = std::max(flow, std::abs(q));
  for (double p : s.pressure_pa) pressure = std::max(pressure, std::abs(p));
  Difference d;
  for (std::size_t i = 0; i < s.flow_m3_s.size(); ++i)
    d.flow = std::max(d.flow, std::abs(s.flow_m3_s[i] - theirs["flows"][i].get<double>()) / flow);
  for (std::size_t k = 0; k < net.nodes.size(); ++k)
    d.pressure = std::max(d.pressure, std::abs(s.pressure_pa[k] - theirs["pressures"][k].get<double>()) / pressure);
  return d;
}

void compare(const json& networks, const json& answers, std::size_t least_compared) {
  std::size_t compared = 0;
  Difference worst;
  ASSERT_EQ(networks.size(), answers["cases"].size());
  for (std::size_t i = 0; i < networks.size(); ++i) {
    const Network net = network_of(networks[i]);
    Solution s;
    ASSERT_TRUE(solve(net, s).usable()) << "network " << i;
    if (!comparable(net, s)) continue;
    ++compared;
    const auto d = difference(net, s, answers["cases"][i]);
    EXPECT_LT(d.flow, agree_share) << "network " << i << ": " << networks[i].dump();
    EXPECT_LT(d.pressure, agree_share) << "network " << i << ": " << networks[i].dump();
    worst = {std::max(worst.flow, d.flow), std::max(worst.pressure, d.pressure)};
  }
  std::printf("%s: %zu of %zu networks compared, flows within %.2f %%, pressures within %.2f %% of the greatest\n",
              answers["engine"].get<std::string>().c_str(), compared, networks.size(), 100 * worst.flow,
              100 * worst.pressure);
  EXPECT_GE(compared, least_compared);
}

/// As text: each item of a list, a network or its answer, in one line.
std::string one_a_line(const json& all) {
  std::string text = "{";
  for (auto& [key, value] : all.items()) {
    text += (text.size() > 1 ? ",\n\"" : "\n\"") + key + "\": ";
    if (!value.is_array()) {
      text += value.dump();
      continue;
    }
    for (std::size_t i = 0; i < value.size(); ++i) text += (i ? ",\n " : "[\n ") + value[i].dump();
    text += "]";
  }
  return text + "\n}\n";
}

/// The other engine's answers, or null where node or its package is not here.
json ask_engine(const json& networks) {
  if (!std::filesystem::exists(folder() / "node_modules/epanet-js")) return nullptr;
  if (std::system("node --version >/dev/null 2>&1") != 0) return nullptr;
  const auto base =
      std::filesystem::temp_directory_path() / ("pipe_network_oracle_" + std::to_string(std::random_device{}()));
  const std::string in = base.string() + ".in", out = base.string() + ".out";
  std::ofstream(in) << networks.dump();
  const std::string command = "node '" + (folder() / "solve.mjs").string() + "' <'" + in + "' >'" + out + "'";
  json answers;
  if (std::system(command.c_str()) == 0) answers = json::parse(std::ifstream(out));
  std::filesystem::remove(in);
  std::filesystem::remove(out);
  EXPECT_TRUE(answers.is_object()) << "the engine is here and gave no answer";
  return answers;
}

json drawn(unsigned seed, int count) {
  std::mt19937 engine(seed);
  json networks = json::array();
  for (int i = 0; i < count; ++i) networks.push_back(random_network(engine));
  return networks;
}

TEST(PipeNetworkOracle, AgreesWithTheAnswersKeptHere) {
  const auto file = folder() / "answers.json";
  if (std::getenv("STREETWRIGHT_WRITE_ORACLE")) {
    const json networks = drawn(20, 36);
    json answers = ask_engine(networks);
    ASSERT_FALSE(answers.is_null());
    answers["note"] = "Computed by the engine named here from the networks beside; see README.md.";
    answers["networks"] = networks;
    std::ofstream(file) << one_a_line(answers);
  }
  const json kept = json::parse(std::ifstream(file));
  compare(kept["networks"], kept, 15);
}

TEST(PipeNetworkOracle, AgreesOnNewNetworks) {
  const unsigned seed = std::random_device{}();
  std::printf("seed %u\n", seed);
  const json networks = drawn(seed, 300);
  const json answers = ask_engine(networks);
  if (answers.is_null())
    GTEST_SKIP()
        << "node or the package epanet-js is not here (npm ci in tests/pipe_network_oracle): compared with the "
           "answers kept there alone";
  compare(networks, answers, 100);
}

}  // namespace
}  // namespace sw::physics::pipes
