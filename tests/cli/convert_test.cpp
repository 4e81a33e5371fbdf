// Conversions that are exact by definition: inch 25.4 mm, 212 degF = 100 degC (NIST SP 811, 2008, appendix B.8).
#include <gtest/gtest.h>

#include "cli/sample_proof.hpp"

namespace sw::cli {
namespace {

TEST(Convert, PutsAValueInOneUnit) {
  EXPECT_EQ(ran({"convert", "17 1/4 in", "mm"}).out, "438.15 mm\n");
  EXPECT_EQ(ran({"convert", "35 %", ""}).out, "0.35\n");
}

TEST(Convert, KeepsTemperatureAndStepApart) {
  EXPECT_EQ(ran({"convert", "212 degF", "degC"}).out,
            "temperature         100 degC\ntemperature step    117.7778 degC\n");
  EXPECT_EQ(ran({"convert", "-40 degC", "degF"}).out, "temperature         -40 degF\ntemperature step    -72 degF\n");
}

TEST(Convert, ShowsEveryUnitOfEveryKind) {
  const Ran r = ran({"convert", "1 in"}, piped("200"));
  EXPECT_EQ(r.code, 0);
  EXPECT_EQ(r.out,
            "length  1 in · 25.4 mm · 0.08333333 ft · 2.54 cm · 0.0254 m · 2.54e-5 km · 1.578283e-5 mile · 25400 um · "
            "1000 thou\n");
}

TEST(Convert, TellsTheLikeliestKindFirst) {
  const std::string out = ran({"convert", "15 inHg"}, piped("200")).out;
  EXPECT_TRUE(out.starts_with("vacuum  15 inHg")) << out;
  EXPECT_EQ(out.find("stress"), std::string::npos) << out;
  EXPECT_TRUE(ran({"convert", "180 F"}, piped("200")).out.starts_with("temperature  82.22222 degC")) << "no farad";
  EXPECT_EQ(ran({"convert", "4/0", "mm2"}).out.substr(0, 5), "107.2");  // ASTM B258: 107.2 mm2 (from memory)
}

TEST(Convert, KnowsWireGauges) {
  EXPECT_EQ(ran({"convert", "10 AWG", "mm2"}).out.substr(0, 5), "5.261");
  EXPECT_EQ(ran({"convert", "5.26 mm2", "AWG"}).out, "10 AWG\n");
  EXPECT_NE(ran({"convert", "5 mm2", "AWG"}).out.find("(between gauges)"), std::string::npos);
}

TEST(Convert, SaysWhatIsWrong) {
  EXPECT_EQ(ran({"convert", "12 psi", "mm"}).code, 2);
  EXPECT_EQ(ran({"convert", "12", "psi"}).err,
            "streetwright: convert: \"12\" has no unit; put value and unit in quotation marks: \"12 psi\"\n");
  EXPECT_EQ(ran({"convert", "12 psy"}).err,
            "streetwright: convert: expected a value such as \"12.5 psi\", got \"12 psy\", whose unit 'psy' is not "
            "known; did you mean "
            "psi?\n");
  EXPECT_EQ(ran({"convert", "3 m/(km/h)^2"}).code, 2);
}

}  // namespace
}  // namespace sw::cli
