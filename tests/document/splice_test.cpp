#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "document/document.hpp"

namespace sw {
namespace {

std::string spliced(const std::string& text, std::vector<Edit> edits) {
  Diagnostics faults;
  auto out = splice(text, edits, faults);
  if (!out) return "refused: " + (faults.all().empty() ? "without a word" : say(faults.all().front(), {"t"}));
  EXPECT_TRUE(faults.all().empty());
  return *out;
}

TEST(Splice, ReplacesInItsRegion) {
  EXPECT_EQ(spliced("# top\n[a]  # first\n  b =\t\"1 in\"   # é, why\nc = 2\n", {{"a.b", "\"2 in\""}}),
            "# top\n[a]  # first\n  b =\t\"2 in\"   # é, why\nc = 2\n");
  EXPECT_EQ(spliced("é = 1\n", {{"b", "2"}}),
            "refused: t:1:1: b: this is not TOML: Error while parsing root table: expected "
            "keys, tables, whitespace or comments, saw 'é'");
  EXPECT_EQ(spliced("a = \"é\" # ü\nb = { x = \"é\", value = \"1 in\" }", {{"b.value", "\"2 in\""}}),
            "a = \"é\" # ü\nb = { x = \"é\", value = \"2 in\" }");
  EXPECT_EQ(spliced("r = [\n  [1, 2],\n  [3, 4], # last\n]\ns = 1", {{"r", "[[1, 2], [5, 6]]"}}),
            "r = [[1, 2], [5, 6]]\ns = 1");
  EXPECT_EQ(spliced("r = \"\"\"a\nb\"\"\" # x", {{"r", "'c'"}}), "r = 'c' # x");
}

TEST(Splice, AFigureGetsItsEvidence) {
  EXPECT_EQ(spliced("[a]\nb = \"1 in\" # tape\n", {{"a.b", "{ value = \"1.1 in\", from = \"measured\" }"}}),
            "[a]\nb = { value = \"1.1 in\", from = \"measured\" } # tape\n");
}

TEST(Splice, NewKeyAtTheEndOfItsTable) {
  EXPECT_EQ(spliced("[a]\nb = 1 # one\n\n# about c\n[c]\nd = 1\n", {{"a.e", "2"}}),
            "[a]\nb = 1 # one\ne = 2\n\n# about c\n[c]\nd = 1\n");
  EXPECT_EQ(spliced("[a]\n[c]\n", {{"a.e", "2"}}), "[a]\ne = 2\n[c]\n");
  EXPECT_EQ(spliced("[a]\nb = 1", {{"a.e", "2"}}), "[a]\nb = 1\ne = 2");
  EXPECT_EQ(spliced("[a]\r\nb = 1\r\n[c]\r\n", {{"a.e", "2"}}), "[a]\r\nb = 1\r\ne = 2\r\n[c]\r\n");
  EXPECT_EQ(spliced("[a]\nb = [\n1,\n2 ] # rows\n[c]", {{"a.e", "2"}}), "[a]\nb = [\n1,\n2 ] # rows\ne = 2\n[c]");
}

// A form keeps an empty place for what has no stand-in.
TEST(Splice, NewKeyInThePlaceACommentKeepsForIt) {
  EXPECT_EQ(spliced("[a]\n# MEASURE b = \"\"   # with a tape\nc = 1\n[d]\n", {{"a.b", "\"2 in\""}}),
            "[a]\nb = \"2 in\"   # with a tape\nc = 1\n[d]\n");
  EXPECT_EQ(spliced("# b = \"\"\nc = 1\n", {{"b", "2"}}), "b = 2\nc = 1\n");
  EXPECT_EQ(spliced("[a]\nc = 1\n[d]\n# MEASURE b = \"\"\n", {{"a.b", "2"}}),
            "[a]\nc = 1\nb = 2\n[d]\n# MEASURE b = \"\"\n")
      << "kept for another table's";
  EXPECT_EQ(spliced("[a]\n# bc = \"\"\n# b = \"3 in\"\nc = 1\n", {{"a.b", "2"}}),
            "[a]\n# bc = \"\"\n# b = \"3 in\"\nc = 1\nb = 2\n")
      << "another key's, and a place that is not empty";
  EXPECT_EQ(spliced("[a]\nt = \"\"\"\n# b = \"\"\n\"\"\"\n", {{"a.b", "2"}}),
            "[a]\nt = \"\"\"\n# b = \"\"\n\"\"\"\nb = 2\n")
      << "inside a text";
}

TEST(Splice, NewKeyAtTheTop) {
  EXPECT_EQ(spliced("x = 1\n[a]\n", {{"y", "2"}}), "x = 1\ny = 2\n[a]\n");
  EXPECT_EQ(spliced("# my car\n\n# cooling\n[a]\n", {{"y", "2"}}), "# my car\n\ny = 2\n# cooling\n[a]\n");
  EXPECT_EQ(spliced("# of a\n[a]\n", {{"y", "2"}}), "y = 2\n# of a\n[a]\n");
  EXPECT_EQ(spliced("", {{"y", "2"}}), "y = 2\n");
  EXPECT_EQ(spliced("\n \n", {{"y", "2"}}), "y = 2\n\n \n") << "found by the fuzz target";
  EXPECT_EQ(spliced("\xEF\xBB\xBFx = 1 # é", {{"x", "3"}, {"y", "2"}}), "\xEF\xBB\xBFx = 3 # é\ny = 2");
}

TEST(Splice, NewTableAtTheEndOfTheText) {
  EXPECT_EQ(spliced("[a]\nb = 1\n", {{"c.d.e", "2"}}), "[a]\nb = 1\n\n[c.d]\ne = 2\n");
  EXPECT_EQ(spliced("[a]\nb = 1", {{"a.d.e", "2"}}), "[a]\nb = 1\n\n[a.d]\ne = 2\n");
  EXPECT_EQ(spliced("[a.b]\nc = 1\n", {{"a.d", "2"}}), "[a.b]\nc = 1\n\n[a]\nd = 2\n");
  EXPECT_EQ(spliced("", {{"a.b", "2"}}), "[a]\nb = 2\n");
}

TEST(Splice, InsideBraces) {
  EXPECT_EQ(spliced("a = { b = 1 }", {{"a.c", "2"}}), "a = { b = 1, c = 2 }");
  EXPECT_EQ(spliced("a = {b = 1}", {{"a.c", "2"}}), "a = {b = 1, c = 2}");
  EXPECT_EQ(spliced("a = {}", {{"a.c", "2"}}), "a = { c = 2 }");
  EXPECT_EQ(spliced("a = { }\n", {{"a.c", "2"}}), "a = { c = 2 }\n");
  EXPECT_EQ(spliced("a = { b = 1 }", {{"a.c.d", "2"}}), "a = { b = 1, c.d = 2 }");
}

TEST(Splice, BesideDottedKeys) {
  EXPECT_EQ(spliced("[a]\nb.c = 1\nz = 1\n", {{"a.b.d", "2"}}), "[a]\nb.c = 1\nz = 1\nb.d = 2\n");
  EXPECT_EQ(spliced("b.c = 1\n[z]\n", {{"b.d", "2"}}), "b.c = 1\nb.d = 2\n[z]\n");
}

TEST(Splice, SeveralEditsOrNone) {
  EXPECT_EQ(spliced("[a]\nb = 1\n", {{"a.b", "2"}, {"a.c", "3"}, {"d.e", "4"}}), "[a]\nb = 2\nc = 3\n\n[d]\ne = 4\n");
  EXPECT_EQ(spliced("[a]\nb = 1\n", {{"a.b", "2"}, {"a.c", "oops"}}),
            "refused: a.c: the new value is not one TOML value: \"oops\"");
}

TEST(Splice, RefusesWhatItCannotDoCleanly) {
  EXPECT_EQ(spliced("[a]\n[a.b]\nvalue = 1\n", {{"a.b", "2"}}),
            "refused: t:2:1: a.b: cannot be set without a change to the text around it; change it by hand");
  EXPECT_EQ(spliced("[a]\nb = 1\n", {{"a.b.c", "2"}}), "refused: t:2:5: a.b.c: cannot be set below 1");
  EXPECT_EQ(spliced("a = 1\n", {{"b", "2\nc = 3"}}),
            "refused: b: the new value is not one TOML value: \"2\\x0ac = 3\"");
  EXPECT_EQ(spliced("a = 1\n", {{"b..c", "2"}}), "refused: b..c: a path is made of names with a dot between");
  EXPECT_EQ(spliced("a = 1\n", {{"b c", "2"}}), "refused: b c: a path is made of names with a dot between");
  EXPECT_EQ(spliced("a = { b = 1 }\n", {{"a.b", "2 # no"}}),
            "refused: t:1:11: a.b: cannot be set without a change to the text around it; change it by hand");
}

/// Lines a user might write, among which edits must find their way.
rc::Gen<std::string> some_text() {
  auto line = rc::gen::element<std::string>("# a note", "", "  # é", "[a]", "[a.b]", "[c.d.e]", "[[f]]", "[ g . h ]");
  auto key = rc::gen::element<std::string>("k", "l", "m", "n.o", "n.p", "\"q\"");
  auto value = rc::gen::element<std::string>("1", "\"é x\" # why", "{ u = 1 }", "{}", "[\n 1,\n 2 ]", "'''\nz'''",
                                             "true", "{ v.w = 2, x = [ {} ] }");
  auto pair = rc::gen::map(rc::gen::tuple(key, value), [](auto t) { return std::get<0>(t) + " = " + std::get<1>(t); });
  auto lines = rc::gen::container<std::vector<std::string>>(rc::gen::oneOf(line, pair, pair));
  return rc::gen::map(rc::gen::tuple(lines, rc::gen::element<std::string>("\n", "\r\n")), [](auto t) {
    std::string text;
    for (auto& l : std::get<0>(t)) text += l + std::get<1>(t);
    return text;
  });
}

/// Length of what two texts have in common at their two ends together.
std::size_t kept(const std::string& before, const std::string& after) {
  std::size_t shortest = std::min(before.size(), after.size()), head = 0, tail = 0;
  while (head < shortest && before[head] == after[head]) ++head;
  while (tail < shortest - head && before[before.size() - 1 - tail] == after[after.size() - 1 - tail]) ++tail;
  return head + tail;
}

RC_GTEST_PROP(Splice, KeepsEveryOtherByte, ()) {
  std::string text = *some_text();
  Diagnostics faults;
  Node before = parse_text(text, 0, false, faults);
  RC_PRE(!faults.any_fault());
  auto path = *rc::gen::element<std::string>("k", "a.k", "a.b.l", "a.n.z", "c.d.k", "c.k", "g.h.m", "k.u", "a.k.new",
                                             "new.one", "z");
  auto out = splice(text, std::vector<Edit>{{path, "\"3 in\""}}, faults);
  RC_CLASSIFY(out.has_value());
  if (!out) {
    RC_ASSERT(faults.all().size() == 1u);
    return;
  }
  // What is there is the new value, and all that is gone is what the old one took.
  const Node* old = &before;
  Diagnostics after_faults;
  Node after = parse_text(*out, 0, false, after_faults);
  RC_ASSERT(!after_faults.any_fault());
  const Node* now = &after;
  for (std::string rest = path; !rest.empty();) {
    auto dot = std::min(rest.find('.'), rest.size());
    if (old) old = old->find(rest.substr(0, dot));
    now = now->find(rest.substr(0, dot));
    RC_ASSERT(now != nullptr);
    rest.erase(0, dot + 1);
  }
  RC_ASSERT(now->text == "3 in");
  std::size_t gone = text.size() - kept(text, *out);
  if (!old) {
    RC_ASSERT(gone == 0u);
  } else if (old->place.line == old->place.end_line) {
    RC_ASSERT(gone <= old->place.end_column - old->place.column);
  } else {
    RC_ASSERT(gone <= std::string_view("[\r\n 1,\r\n 2 ]'''").size());
  }
}

}  // namespace
}  // namespace sw
