#include "model/resolver.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace sw {
namespace {

struct Part {
  std::optional<Length> width;
  std::optional<double> share;
  std::optional<Curve> loss;
  static std::span<const FieldInfo> fields();
};
constexpr FieldInfo part_table[] = {quantity<&Part::width>("width", "width", kind::length).in("in").says("Width."),
                                    number<&Part::share>("share", "share").says("Share."),
                                    curve<&Part::loss>("loss", "loss", kind::speed, kind::number).says("Loss.")};
std::span<const FieldInfo> Part::fields() { return part_table; }

struct Whole {
  Part part;
  Named<Part> spare;
};
constexpr FieldInfo whole_table[] = {group<&Whole::part>("part", "part"), list<&Whole::spare>("spare", "spares")};

struct Resolving : testing::Test {
  Whole whole;
  EvidenceMap evidence;
  Resolver resolver() { return Resolver(whole_table, &whole, evidence); }
};

TEST_F(Resolving, NotesWhatIsMissingByItsPath) {
  whole.spare.entries = {{"left", {}}, {"right", {}}};
  Resolver r = resolver();
  EXPECT_TRUE(std::isnan(r.need(whole.part.width)));
  EXPECT_TRUE(std::isnan(r.need(whole.spare.entries[1].second.share)));
  EXPECT_EQ(r.need(whole.part.loss), nullptr);
  r.lacks("a way from one to the other");
  EXPECT_EQ(r.take_missing(),
            (std::vector<std::string>{"part.width", "spare.right.share", "part.loss", "a way from one to the other"}));
  EXPECT_TRUE(r.take_missing().empty());  // forgotten once handed over
}

TEST_F(Resolving, GivesWhatIsThere) {
  whole.part.width = Length{0.5};
  whole.part.share = 0.25;
  whole.part.loss = Curve{{1, 2}, {3, 4}};
  Resolver r = resolver();
  EXPECT_EQ(r.need(whole.part.width), 0.5);
  EXPECT_EQ(r.need(whole.part.share), 0.25);
  ASSERT_NE(r.need(whole.part.loss), nullptr);
  EXPECT_EQ(r.need(whole.part.loss)->y[1], 4);
  EXPECT_EQ(r.get(whole.part.width, 9), 0.5);
  EXPECT_TRUE(r.take_missing().empty());
}

TEST_F(Resolving, GetTakesTheOtherWithoutNoting) {
  Resolver r = resolver();
  EXPECT_EQ(r.get(whole.part.width, 9), 9);
  EXPECT_TRUE(r.take_missing().empty());
}

TEST_F(Resolving, FindsPathAndEvidenceByAddress) {
  whole.part.width = Length{0.5};
  evidence["part.width"] = {};
  Resolver r = resolver();
  EXPECT_EQ(r.path_of(&whole.part.share), "part.share");
  EXPECT_EQ(r.evidence_of(&whole.part.width), &evidence.find("part.width")->second);
  EXPECT_EQ(r.evidence_of(&whole.part.share), nullptr);
  const double stranger = 0;
  EXPECT_EQ(r.path_of(&stranger), "");
}

}  // namespace
}  // namespace sw
