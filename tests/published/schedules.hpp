#pragma once
// Published totals of the drive schedules UDDS, HWFET and US06. The traces are not shipped: the totals are held where
// the environment variable STREETWRIGHT_DATA names a folder with udds.csv, hwfet.csv and us06.csv (columns time_s,
// speed_mph), or with these in its folder `cycles`. The law itself is tested on an invented trace in
// tests/physics/cycle_test.cpp.
#include <string_view>

namespace sw::published {

struct Total {
  std::string_view id, what, file, spans, output, unit;
  double expected;
  std::string_view tolerance, source, provenance = "published-seen";
};

inline constexpr std::string_view udds_source = "40 CFR Part 86 Appendix I (UDDS)";
inline constexpr Total totals[] = {
    {"RLD-01", "UDDS, distance", "udds.csv", "", "distance", "mile", 7.45, "0.005", udds_source},
    {"RLD-02", "UDDS, duration", "udds.csv", "", "duration", "s", 1369, "exact", udds_source},
    {"RLD-03", "UDDS, mean speed", "udds.csv", "", "mean_speed", "mph", 19.59, "0.01", udds_source},
    {"RLD-04", "UDDS, top speed", "udds.csv", "", "top_speed", "mph", 56.7, "0.05", udds_source},
    {"RLD-07", "HWFET, distance", "hwfet.csv", "", "distance", "mile", 10.26, "0.005",
     "40 CFR Part 600, highway schedule"},
    {"RLD-09", "US06, distance", "us06.csv", "", "distance", "mile", 8.01, "0.005",
     "40 CFR Part 86 Appendix I (US06); an encyclopaedia's page agrees"},
    {"RLD-11", "FTP-75, distance: UDDS and its first 505 s again", "udds.csv", "0, 1369; 0, 505 s", "distance", "mile",
     11.04, "0.01", "a page that prints 11.04; equals 7.450 + 3.591"},
    {"RLD-12", "UDDS, greatest acceleration", "udds.csv", "", "greatest_acceleration", "mph/s", 3.3, "0.02",
     udds_source},
};

}  // namespace sw::published
