#include "quantity/words.hpp"

namespace sw {
namespace {

constexpr std::size_t longest_shown = 60;

struct Known {
  std::string_view bytes, plain;
};
constexpr Known signs[] = {
    {"\xC2\xB0"
     "C",
     "degC"},
    {"\xC2\xB0"
     "F",
     "degF"},
    {"\xC2\xB0", "deg"},
    {"\xCE\xA9", "ohm"},
    {"\xE2\x84\xA6", "ohm"},  // the ohm sign proper; the one before is the Greek capital
    {"\xC2\xB5", "u"},        // the micro sign, and the Greek small letter
    {"\xCE\xBC", "u"},
};
constexpr Known pasted[] = {
    {"\xE2\x88\x92", "write the minus sign as -"},
    {"\xE2\x80\x93", "write the minus sign as -"},
    {"\xC2\xBD", "write 1/2"},
    {"\xC2\xBC", "write 1/4"},
    {"\xC2\xBE", "write 3/4"},
    {"\xC2\xB2", "write m2 or m^2"},
    {"\xC2\xB3", "write m3 or m^3"},
    {"\xC2\xB7", "write a space between units that multiply"},
    {"\xE2\x80\x9D", "write in"},
    {"\xE2\x80\xB3", "write in"},
    {"\xE2\x80\xB2", "write ft"},
    {"\xC2\xA0", "write a plain space"},
};

bool vowel(char c) { return std::string_view("aeiou").find(c) != std::string_view::npos; }

}  // namespace

std::string TextFault::sentence() const {
  std::string out = "expected " + expected + ", got \"" + given + '"';
  if (!remark.empty()) out += ", " + remark;
  return out;
}

std::string shown(std::string_view text) {
  constexpr char digits[] = "0123456789ABCDEF";
  std::string out;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (i == longest_shown) return out + "...";
    const auto byte = static_cast<unsigned char>(text[i]);
    if (const Sign s = sign_at(text.substr(i)); s.length > 0) {
      out += text.substr(i, s.length);
      i += s.length - 1;
    } else if (byte >= 0x20 && byte < 0x7f) {
      out += text[i];
    } else {
      out += "\\x";
      out += digits[byte >> 4];
      out += digits[byte & 15];
    }
  }
  return out;
}

std::string with_article(std::string_view name) {
  const std::string_view first = name.substr(0, name.find(' '));
  if (first.ends_with('s') && !first.ends_with("ss")) return std::string(name);
  return (!name.empty() && vowel(name[0]) ? "an " : "a ") + std::string(name);
}

std::string measured_by(const Unit& unit) {
  if (unit.gauge) return "a wire size";
  if (unit.dimension == dim::torque) return "a torque or an energy";
  if (unit.dimension == dim::pressure) return "a pressure";  // of which kind, the unit alone does not say
  for (const Kind* k : all_kinds())
    if (k->dimension == unit.dimension) return with_article(k->name);
  return {};
}

TextFault value_fault(std::string_view given, const Kind& kind, std::string remark, std::string hint) {
  return {shown(given), with_article(kind.name) + " such as \"" + std::string(kind.example) + '"', std::move(remark),
          std::move(hint)};
}

TextFault unit_fault(std::string_view given, const Kind& kind, std::string remark, std::string hint) {
  std::string expected = "a unit of " + std::string(kind.name);
  if (!kind.units.empty() && !kind.units[0].empty())
    expected += " such as \"" + std::string(kind.units[0]) + '"';
  else
    expected = "no unit, or \"%\"";
  return {shown(given), std::move(expected), std::move(remark), std::move(hint)};
}

Sign sign_at(std::string_view text) {
  for (auto& s : signs)
    if (text.starts_with(s.bytes)) return {s.bytes.size(), s.plain};
  return {};
}

std::optional<Foreign> foreign_character(std::string_view text) {
  std::size_t place = 1;
  for (std::size_t i = 0; i < text.size(); ++place) {
    const auto byte = static_cast<unsigned char>(text[i]);
    if (const Sign s = sign_at(text.substr(i)); s.length > 0) {
      // "°C" is two characters to its writer.
      place += s.length > 2 && s.plain != "ohm" ? 1 : 0;
      i += s.length;
      continue;
    }
    if (byte >= 0x80 || byte == 0x7f || (byte < 0x20 && byte != '\t')) {
      for (auto& p : pasted)
        if (text.substr(i).starts_with(p.bytes)) return Foreign{place, p.plain};
      return Foreign{place, {}};
    }
    ++i;
  }
  return std::nullopt;
}

std::string_view trimmed(std::string_view text) {
  const auto first = text.find_first_not_of(" \t");
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

}  // namespace sw
