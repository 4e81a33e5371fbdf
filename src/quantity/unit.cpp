#include "quantity/unit.hpp"

#include <array>
#include <cmath>
#include <numbers>
#include <optional>

#include "quantity/customary.hpp"
#include "quantity/respell.hpp"
#include "quantity/unit_table.hpp"
#include "quantity/wire_gauge.hpp"
#include "quantity/words.hpp"

namespace sw {
namespace {

constexpr int deepest_bracket = 8;
constexpr int greatest_power = 9;      // no unit of the trade goes beyond the fourth
constexpr int greatest_exponent = 60;  // keeps sums of exponents inside Dimension's int8

struct Trouble {
  std::string remark, hint;
};

/// A product under way; exponents are wide enough not to wrap before they are checked.
struct Product {
  std::array<int, 6> exponents{};
  double factor = 1;
  int names = 0;
  int pounds = 0, turns = 0;  ///< exponents of `lb` and `rev`, whose meaning hangs on what is beside them
  std::optional<Unit> alone;  ///< the unit, where it stands by itself
  bool referenced = false;    ///< holds psia, psig or AWG
};

std::array<int, 6> exponents_of(const Dimension& d) {
  return {d.length, d.mass, d.time, d.current, d.temperature, d.angle};
}
Dimension dimension_of(const std::array<int, 6>& e) {
  auto narrow = [](int x) { return static_cast<std::int8_t>(x); };
  return {narrow(e[0]), narrow(e[1]), narrow(e[2]), narrow(e[3]), narrow(e[4]), narrow(e[5])};
}

bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '%'; }
bool is_digit(char c) { return c >= '0' && c <= '9'; }

class UnitReader {
 public:
  explicit UnitReader(std::string_view text) : text_(text) {}

  std::variant<Unit, Trouble> read() {
    Product all;
    if (!expression(all, 0)) return trouble_;
    if (at_ < text_.size()) return misplaced(), trouble_;
    if (all.referenced && !all.alone) {
      fail("which combines a unit that has to stand alone", "use psi for psia and psig, mm2 for AWG");
      return trouble_;
    }
    return finish(all);
  }

 private:
  char peek(std::size_t ahead = 0) const { return at_ + ahead < text_.size() ? text_[at_ + ahead] : '\0'; }
  void skip_space() {
    while (peek() == ' ' || peek() == '\t') ++at_;
  }
  bool fail(std::string remark, std::string hint = {}) {
    trouble_ = {std::move(remark), std::move(hint)};
    return false;
  }
  /// Whatever stands here cannot: says what it is.
  bool misplaced() {
    if (at_ >= text_.size()) return fail("whose unit breaks off");
    if (is_digit(peek())) return fail("which has a number where a unit is expected", "write one number without spaces");
    const std::string_view here = text_.substr(at_, 1);
    const std::string_view meant = nearest_unit(here);
    return fail("which has '" + shown(here) + "' where a unit is expected",
                meant.empty() ? "" : "write " + std::string(meant));
  }

  bool expression(Product& out, int depth) {
    if (depth > deepest_bracket) return fail("whose unit has too many brackets");
    skip_space();
    if (peek() == '1' && !is_digit(peek(1))) {  // `1/mile`
      ++at_;
      skip_space();
      if (peek() != '/') return --at_, misplaced();
    } else if (!factor(out, 1, depth)) {
      return false;
    }
    for (;;) {
      const std::size_t before = at_;
      skip_space();
      const char c = peek();
      if (at_ >= text_.size() || c == ')') return true;
      const bool joined = c == '-' && at_ == before && is_letter(peek(1));
      if (c == '/' || c == '*' || joined)
        ++at_;
      else if (at_ == before && c != '(')
        return misplaced();
      skip_space();
      if (!factor(out, c == '/' ? -1 : 1, depth)) return false;
    }
  }

  bool factor(Product& out, int sign, int depth) {
    if (peek() == '(') {
      Product inner;
      ++at_;
      if (!expression(inner, depth + 1)) return false;
      if (peek() != ')') return fail("whose unit has a bracket that is not closed");
      ++at_;
      int n = 1;
      return (peek() != '^' || power_of(n)) && multiply(out, inner, sign * n);
    }
    const std::string name = read_name();
    if (name.empty()) return misplaced();
    const auto unit = find_unit(name);
    if (!unit) return unknown(name);
    int n = 1;
    if ((peek() == '^' || is_digit(peek())) && !power_of(n)) return false;
    Product one{.exponents = exponents_of(unit->dimension),
                .factor = unit->factor,
                .names = 1,
                .pounds = name == "lb",
                .turns = name == "rev",
                .alone = unit,
                .referenced = unit->reference != Reference::none || unit->gauge};
    return multiply(out, one, sign * n);
  }

  bool unknown(const std::string& name) {
    const std::string_view meant = nearest_unit(name);
    return fail("whose unit '" + shown(name) + "' is not known",
                meant.empty() ? "" : "did you mean " + std::string(meant) + "?");
  }

  std::string read_name() {
    static constexpr std::string_view with_digit = "inH2O";
    if (text_.substr(at_).starts_with(with_digit)) return at_ += with_digit.size(), std::string(with_digit);
    std::string name;
    while (at_ < text_.size()) {
      if (is_letter(peek())) {
        name += text_[at_++];
      } else if (const Sign s = sign_at(text_.substr(at_)); s.length > 0) {
        name += s.plain;
        at_ += s.length;
      } else {
        break;
      }
    }
    return name;
  }

  bool power_of(int& n) {
    const bool caret = peek() == '^';
    if (caret) ++at_;
    const bool negative = caret && peek() == '-';
    if (negative) ++at_;
    if (!is_digit(peek())) return misplaced();
    n = peek() - '0';
    ++at_;
    if (is_digit(peek()) || n == 0 || n > greatest_power) return fail("whose unit has a power that makes no sense");
    if (negative) n = -n;
    return true;
  }

  bool multiply(Product& out, const Product& by, int n) {
    const bool first = out.names == 0 && n == 1;
    for (std::size_t i = 0; i < out.exponents.size(); ++i) {
      out.exponents[i] += by.exponents[i] * n;
      if (std::abs(out.exponents[i]) > greatest_exponent) return fail("whose unit has a power that makes no sense");
    }
    out.factor *= std::pow(by.factor, n);
    if (!std::isnormal(out.factor)) return fail("whose unit is beyond all measure");
    out.names += by.names;
    out.pounds += by.pounds * n;
    out.turns += by.turns * n;
    out.referenced = out.referenced || by.referenced;
    out.alone = first ? by.alone : std::nullopt;
    return true;
  }

  static Unit finish(const Product& p) {
    if (p.alone) return *p.alone;
    Unit out{dimension_of(p.exponents), p.factor};
    if (out.dimension == dim::mass * dim::length && p.pounds == 1) {
      out.dimension = dim::torque;
      out.factor *= standard_gravity_m_s2;
    } else if (out.dimension == dim::angle / dim::length && p.turns == 1) {
      out.dimension = dim::per_length;
      out.factor /= 2 * std::numbers::pi;
    }
    return out;
  }

  std::string_view text_;
  std::size_t at_ = 0;
  Trouble trouble_;
};

std::variant<Unit, Trouble> read_unit(std::string_view text) {
  if (const auto foreign = foreign_character(text))
    return Trouble{"whose character " + std::to_string(foreign->place) + " cannot stand in a unit",
                   std::string(foreign->hint)};
  return UnitReader(text).read();
}

/// `W/m2 K` is read from left to right and then measures something nobody asked for.
bool multiplies_after_dividing(std::string_view text) {
  const auto slash = text.find('/');
  return slash != std::string_view::npos && text.find('(') == std::string_view::npos &&
         text.find(' ', slash) != std::string_view::npos;
}

std::string mismatch_hint(std::string_view text, const Kind& kind) {
  if (multiplies_after_dividing(text)) return "put what divides in brackets, as in \"W/(m2 K)\"";
  if (text == "lb" && kind.dimension == dim::force) return "lb is a mass; write lbf";
  if (text == "lb" && kind.dimension == dim::pressure) return "lb is a mass; write psi";
  if (text == "deg" && kind.dimension == dim::temperature) return "write degC or degF";
  if (text.starts_with("lb/") && kind.dimension == dim::pressure) return "lb is a mass; write psi or lbf/in2";
  return {};
}

bool measures(const Unit& unit, const Kind& kind) {
  return unit.dimension == kind.dimension && (!unit.gauge || kind.wire_gauge);
}

std::variant<Unit, Trouble> strictly(std::string_view text, const Kind& kind) {
  auto read = read_unit(text);
  const auto* unit = std::get_if<Unit>(&read);
  if (!unit || measures(*unit, kind)) return read;
  const std::string what = measured_by(*unit);
  return Trouble{what.empty() ? "which measures something else" : "which is " + what, mismatch_hint(text, kind)};
}

/// As written, else as the workshop means it. A loose spelling of what does not fit is told as that: `13 lbs` of
/// boost is a mass.
std::variant<Unit, Trouble> read_for(std::string_view text, const Kind& kind) {
  auto read = strictly(text, kind);
  if (std::holds_alternative<Unit>(read)) return read;
  const auto other = respelled(text, kind);
  if (!other) return read;
  auto again = strictly(*other, kind);
  const bool known = std::holds_alternative<Unit>(read_unit(*other));
  return known ? again : read;
}

/// psia and psig only where they say what the kind says.
std::optional<TextFault> reference_fault(std::string_view text, const Unit& unit, const Kind& kind) {
  if (unit.reference == Reference::none || unit.reference == kind.reference) return std::nullopt;
  const bool absolute = unit.reference == Reference::absolute;
  if (!absolute && kind.reference == Reference::none) return std::nullopt;  // above the air is a difference
  std::string remark = absolute ? "which counts from a perfect vacuum" : "which counts up from the surrounding air";
  std::string hint = "give the pressure above the surrounding air";
  if (kind.reference == Reference::absolute) hint = "give the pressure above a perfect vacuum, in psia or psi";
  if (kind.reference == Reference::vacuum) hint = "give how far it is below the surrounding air, in inHg or psi";
  if (kind.reference == Reference::none) hint = "give the difference, in psi";
  return unit_fault(text, kind, std::move(remark), std::move(hint));
}

std::string offered(const Kind& kind) {
  std::string out = "units:";
  for (auto u : kind.units) out += (out.back() == ':' ? " " : ", ") + std::string(u);
  return out;
}

}  // namespace

std::variant<Unit, TextFault> parse_unit(std::string_view text) {
  text = trimmed(text);
  auto fault = [text](Trouble t) {
    return TextFault{shown(text), "a unit such as \"W/(m2 K)\"", std::move(t.remark), std::move(t.hint)};
  };
  if (text.empty()) return fault({"which is empty", {}});
  auto read = read_unit(text);
  if (auto* trouble = std::get_if<Trouble>(&read)) return fault(std::move(*trouble));
  return std::get<Unit>(read);
}

std::variant<Unit, TextFault> parse_unit_for(std::string_view text, const Kind& kind) {
  text = trimmed(text);
  if (text.empty()) {
    if (kind.dimension == dim::none) return Unit{};
    return unit_fault(text, kind, "which is empty", offered(kind));
  }
  // The one name that means two things: of an acceleration it is standard gravity, and a gram is none.
  if (text == "g" && kind.dimension == dim::acceleration) return Unit{dim::acceleration, standard_gravity_m_s2};
  auto read = read_for(text, kind);
  if (auto* trouble = std::get_if<Trouble>(&read))
    return unit_fault(text, kind, std::move(trouble->remark), std::move(trouble->hint));
  Unit unit = std::get<Unit>(read);
  if (auto fault = reference_fault(text, unit, kind)) return std::move(*fault);
  const bool keeps_zero = kind.dimension == dim::temperature && kind.reference == Reference::absolute;
  if (!keeps_zero) unit.offset = 0;
  return unit;
}

double to_si(double number, const Unit& unit) {
  return unit.gauge ? gauge_area(number) : number * unit.factor + unit.offset;
}

}  // namespace sw
