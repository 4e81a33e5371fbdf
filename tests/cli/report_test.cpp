// Whole pages are a regression: our own output, looked at and kept.
#include "cli/report.hpp"

#include <gtest/gtest.h>

#include "cli/page.hpp"
#include "cli/sample_proof.hpp"
#include "repository/files.hpp"

namespace sw::cli {
namespace {

std::string golden(const std::string& name) {
  return repository::read_file(repository::root() / "tests/cli/golden" / name);
}

std::vector<std::string> lines_of(const std::string& text) { return repository::lines_of(text); }

const ReportOptions usual{.all = false, .title = "Thistledown saloon (invented)", .build = "thistledown.toml"};

TEST(Report, AsAWholeAt80Columns) {
  EXPECT_EQ(report(sample_proof(), {.width = 80, .unicode = true, .colour = false}, usual), golden("report_80.txt"));
}
TEST(Report, AsAWholeAt60ColumnsInAscii) {
  EXPECT_EQ(report(sample_proof(), {.width = 60, .unicode = false, .colour = false}, usual),
            golden("report_60_ascii.txt"));
}
TEST(Report, AsAWholeAt120ColumnsWithAll) {
  ReportOptions all = usual;
  all.all = true;
  EXPECT_EQ(report(sample_proof(), {.width = 120, .unicode = true, .colour = false}, all),
            golden("report_120_all.txt"));
}

TEST(Report, StaysWithinAnyWidth) {
  ReportOptions all = usual;
  all.all = true;
  for (bool unicode : {true, false})
    for (int width = 60; width <= 200; width += 7)
      for (auto& line : lines_of(report(sample_proof(), {.width = width, .unicode = unicode, .colour = false}, all)))
        EXPECT_LE(seen(line), width) << line;
}

TEST(Report, IsPlainAsciiWhereItMustBe) {
  for (char c : report(sample_proof(), {.width = 80, .unicode = false, .colour = false}, usual))
    EXPECT_TRUE(c == '\n' || (c >= ' ' && c <= '~')) << static_cast<int>(c);
}

// Colour is never the only sign: without it the same words and forms stand there.
TEST(Report, SaysTheSameWithoutColour) {
  std::string coloured = report(sample_proof(), {.width = 80, .unicode = true, .colour = true}, usual), bare;
  EXPECT_NE(coloured.find('\x1b'), std::string::npos);
  for (std::size_t i = 0; i < coloured.size(); ++i)
    if (coloured[i] == '\x1b')
      i = coloured.find('m', i);
    else
      bare += coloured[i];
  EXPECT_EQ(bare, report(sample_proof(), {.width = 80, .unicode = true, .colour = false}, usual));
}

TEST(Report, NamesTheHeaviestPartFirst) {
  const auto lines = lines_of(report(sample_proof(), {.width = 120, .unicode = true, .colour = false}, usual));
  EXPECT_EQ(lines.at(1),
            "Of what can be chosen, a tenth more or less moves what fails most at: fan current (cooling.fan.left)");
}

TEST(Report, TellsTheCutFigureAndWhatCameOfIt) {
  Proof p{.findings = {short_of_current()}, .duties = {}, .next = {}};
  auto& lines = p.findings[0].because;
  lines.insert(lines.begin() + 3, computed("alone it would hold", 5, kind::current, "A", "engine.speed"));
  lines[3].role = Role::alone;
  const Look wide{.width = 200, .unicode = true, .colour = false};
  EXPECT_NE(report(p, wide, usual)
                .find("because engine speed 763.9 rpm → current it can give 52 A → all loads together 59 A → alone it "
                      "would hold 5 A;"),
            std::string::npos);
  lines[3].path = "alternator.available";
  EXPECT_NE(report(p, wide, usual)
                .find("because current it can give 52 A → all loads together 59 A → alone it would hold 5 A;"),
            std::string::npos)
      << "no figure stands there twice";
}

/// The sample with a story: the fan first, then what is short of current in hot-idle, from which parade follows.
Proof told_proof() {
  Proof p = sample_proof();
  p.findings[0].follows = p.findings[1].id;
  p.story = {.opening = "At hot-idle it is 7 A short.", .order = {4, 1, 0}};
  return p;
}
TEST(Report, TellsTheStoryInItsOrder) {
  const auto text = report(told_proof(), {.width = 120, .unicode = true, .colour = false}, usual);
  EXPECT_EQ(lines_of(text).at(1), "At hot-idle it is 7 A short.");
  EXPECT_LT(text.find("fan blows with the travel"), text.find("current made covers current used"));
}
TEST(Report, PutsWhatOnlyFollowsUnderItsCause) {
  const auto text = report(told_proof(), {.width = 120, .unicode = true, .colour = false}, usual);
  EXPECT_NE(text.find("also follows: current made covers current used"), std::string::npos);
  EXPECT_NE(text.find("parade: -4 A ± 3 A where 0 A is the least"), std::string::npos);
  EXPECT_EQ(text.find("also parade"), std::string::npos);
  EXPECT_TRUE(text.ends_with("3 fail · 1 tight · 1 unproven · 2 hold\n")) << "it is still counted";
}

TEST(Report, TellsWhatIsOffInOneLineASystem) {
  Proof p{.findings = {thick_wire(), thick_wire(), thick_wire()}, .duties = {}, .next = {}};
  p.findings[1].id = "wiring.carries[lamp]@hot-idle", p.findings[1].predicted = 0;
  p.findings[2].id = "wiring.carries[lamp]@cruise", p.findings[2].predicted = 0;
  const auto text =
      report(p, {.width = 120, .unicode = true, .colour = false}, {.all = true, .title = "", .build = "x.toml"});
  EXPECT_NE(text.find("wiring: 2 more where nothing flows"), std::string::npos) << text;
  EXPECT_EQ(text.find("lamp"), std::string::npos);
  EXPECT_TRUE(text.ends_with("0 fail · 0 tight · 0 unproven · 1 hold · 2 where nothing flows\n"));
}

TEST(Report, ListsOnlyTheSystemsAskedForAndCountsTheOthers) {
  ReportOptions narrow = usual;
  narrow.all = true;
  narrow.systems = {"cooling"};
  const auto text = report(sample_proof(), {.width = 120, .unicode = true, .colour = false}, narrow);
  EXPECT_NE(text.find(clean(hot_coolant().title)), std::string::npos) << text;
  EXPECT_EQ(text.find("current made covers current used"), std::string::npos) << text;
  EXPECT_NE(text.find("Not listed, of other systems: 2 fail · 2 hold\n"), std::string::npos) << text;
  EXPECT_TRUE(text.ends_with("3 fail · 1 tight · 1 unproven · 2 hold\n")) << "the count is the whole car's";
}

TEST(Report, PutsWhatIsMeasuredAtOnePartTogether) {
  Proof p = sample_proof();
  p.next = {{"wiring.run.feed.gauge", std::nullopt, "wiring.a", 1.0, 12, Hazard::harm},
            {"cooling.cap.pressure", std::nullopt, "cooling.cap", 1.0, 1, Hazard::damage},
            {"wiring.run.feed.length", std::nullopt, "wiring.b", 1.0, 3, Hazard::nuisance}};
  const auto text = report(p, {.width = 120, .unicode = true, .colour = false}, usual);
  EXPECT_NE(text.find("Measure next: wiring.run\n"
                      "  feed.gauge, missing for wiring.a and decides 11 more; harm\n"
                      "  feed.length, missing for wiring.b and decides 2 more\n"
                      "Measure next: cooling.cap.pressure, missing for cooling.cap\n"),
            std::string::npos)
      << text;
}

TEST(Report, EndsWithTheCounts) {
  EXPECT_EQ(count_line(sample_proof()), "3 fail · 1 tight · 1 unproven · 2 hold");
  const auto text = report(sample_proof(), {.width = 80, .unicode = true, .colour = false}, usual);
  EXPECT_TRUE(text.ends_with("3 fail · 1 tight · 1 unproven · 2 hold\n"));
}

TEST(Report, SaysOnceThatItIsNoCertificate) {
  for (const Proof& p : {sample_proof(), Proof{}}) {
    const auto text = report(p, {.width = 200, .unicode = true, .colour = false}, usual);
    const auto at = text.find("aid to judgement and not a certificate");
    EXPECT_NE(at, std::string::npos);
    EXPECT_EQ(text.find("certificate", at + 40), std::string::npos);
  }
}

TEST(Report, LetsNothingOfTheUsersSteerTheTerminal) {
  Proof p = sample_proof();
  for (auto& f : p.findings) f.title = f.place = f.fix_hint = f.reason = "a\x1b[31mb\x01\nc";
  ReportOptions odd{.all = true, .title = "\x1b]0;x\x07", .build = "\r\x1b"};
  for (char c : report(p, {.width = 80, .unicode = true, .colour = false}, odd))
    EXPECT_TRUE(c == '\n' || static_cast<unsigned char>(c) >= 0x20) << static_cast<int>(c);
}

}  // namespace
}  // namespace sw::cli
