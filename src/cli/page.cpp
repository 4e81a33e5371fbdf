#include "cli/page.hpp"

#include <algorithm>
#include <array>
#include <cstdint>
#include <span>

namespace sw::cli {
namespace {

constexpr char last_style = '\x05', firm_blank = '\x06';
bool is_style(char c) { return c >= '\x01' && c <= last_style; }

struct Spelling {
  std::string_view sign, plain;
};
// Signs this program writes, and those that units and names of users commonly bring.
constexpr Spelling spellings[] = {{"±", "+/-"}, {"−", "-"},   {"–", "-"},   {"—", "-"},   {"→", "->"}, {"·", "|"},
                                  {"…", "..."}, {"°", "deg"}, {"Ω", "ohm"}, {"µ", "u"},   {"μ", "u"},  {"×", "x"},
                                  {"≤", "<="},  {"≥", ">="},  {"½", "1/2"}, {"¼", "1/4"}, {"²", "2"},  {"³", "3"},
                                  {"‘", "'"},   {"’", "'"},   {"“", "\""},  {"”", "\""}};

/// Bytes of the UTF-8 character at the front of `text`, 1 for a stray byte.
std::size_t length_at(std::string_view text) {
  const auto byte = static_cast<unsigned char>(text[0]);
  std::size_t n = byte >= 0xf0 ? 4 : byte >= 0xe0 ? 3 : byte >= 0xc0 ? 2 : 1;
  if (n > text.size()) return 1;
  for (std::size_t i = 1; i < n; ++i)
    if ((static_cast<unsigned char>(text[i]) & 0xc0) != 0x80) return 1;
  return n;
}

std::uint32_t code_at(std::string_view text, std::size_t n) {
  const auto byte = [&](std::size_t i) { return static_cast<std::uint32_t>(static_cast<unsigned char>(text[i])); };
  if (n == 1) return byte(0);
  std::uint32_t code = byte(0) & (0xffu >> (n + 1));
  for (std::size_t i = 1; i < n; ++i) code = code << 6 | (byte(i) & 0x3f);
  return code;
}

struct CodeRange {
  std::uint32_t first, last;
};
bool within(std::uint32_t code, std::span<const CodeRange> ranges) {
  return std::any_of(ranges.begin(), ranges.end(), [code](auto& r) { return code >= r.first && code <= r.last; });
}
// Names of users may hold these; ours do not. Blocks by the Unicode code charts: combining marks and joiners take no
// room, East Asian letters and pictures take two columns.
constexpr CodeRange no_room[] = {{0x300, 0x36f}, {0x200b, 0x200f}, {0x20d0, 0x20ff}, {0xfe00, 0xfe0f}};
constexpr CodeRange two_columns[] = {{0x1100, 0x115f}, {0x2e80, 0xa4cf},   {0xac00, 0xd7a3},  {0xf900, 0xfaff},
                                     {0xff00, 0xff60}, {0x1f300, 0x1f9ff}, {0x20000, 0x3fffd}};

int columns_of(std::uint32_t code) { return within(code, no_room) ? 0 : within(code, two_columns) ? 2 : 1; }

/// Bytes from the front that fill at most `columns`; at least one character.
std::size_t cut(std::string_view text, int columns) {
  std::size_t i = 0;
  int used = 0;
  while (i < text.size()) {
    const std::size_t n = length_at(text.substr(i));
    const int wide = is_style(text[i]) ? 0 : columns_of(code_at(text.substr(i), n));
    if (i > 0 && used + wide > columns) break;
    used += wide;
    i += n;
  }
  return i;
}

/// Where to cut a word that must be: after a dot or its like in the last half of what fits, else anywhere.
std::size_t cut_word(std::string_view word, int columns) {
  const std::size_t n = cut(word, columns);
  const std::size_t dot = word.substr(0, n).find_last_of(".@/,");
  return dot != std::string_view::npos && dot >= n / 2 ? dot + 1 : n;
}

std::string styled(std::string_view mark, std::string_view text) {
  return text.empty() ? std::string() : std::string(mark) + std::string(text) + std::string(style::plain);
}

std::string_view escape(char mark) {
  // Two colours only, harm and touch; of the 256-colour palette, dark enough for a light ground, light enough for dark.
  static constexpr std::array<std::string_view, 5> codes = {"\x1b[1m", "\x1b[2m", "\x1b[1;38;5;166m", "\x1b[38;5;31m",
                                                            "\x1b[0m"};
  return codes[static_cast<std::size_t>(mark - 1)];
}

}  // namespace

std::string strong(std::string_view text) { return styled(style::strong, text); }
std::string faint(std::string_view text) { return styled(style::faint, text); }
std::string harm(std::string_view text) { return styled(style::harm, text); }
std::string touch(std::string_view text) { return styled(style::touch, text); }

std::string together(std::string_view text) {
  std::string out(text);
  std::replace(out.begin(), out.end(), ' ', firm_blank);
  return out;
}

std::string clean(std::string_view text) {
  std::string out;
  for (char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    out += byte < 0x20 || byte == 0x7f ? ' ' : c;
  }
  return out;
}

std::string to_ascii(std::string_view text) {
  std::string out;
  for (std::size_t i = 0; i < text.size();) {
    const std::size_t n = length_at(text.substr(i));
    const std::string_view sign = text.substr(i, n);
    const auto* known =
        std::find_if(std::begin(spellings), std::end(spellings), [&](auto& s) { return s.sign == sign; });
    if (static_cast<unsigned char>(text[i]) < 0x80)
      out += text[i];
    else
      out += known == std::end(spellings) ? "?" : known->plain;
    i += n;
  }
  return out;
}

int seen(std::string_view text) {
  int columns = 0;
  for (std::size_t i = 0; i < text.size();) {
    const std::size_t n = length_at(text.substr(i));
    if (!is_style(text[i])) columns += columns_of(code_at(text.substr(i), n));
    i += n;
  }
  return columns;
}

std::string pad(std::string_view text, int columns) {
  return std::string(text) + std::string(static_cast<std::size_t>(std::max(0, columns - seen(text))), ' ');
}

std::string pad_left(std::string_view text, int columns) {
  return std::string(static_cast<std::size_t>(std::max(0, columns - seen(text))), ' ') + std::string(text);
}

std::vector<std::string> wrap(std::string_view text, int columns, int hang) {
  columns = std::max(columns, 1);
  hang = std::min(hang, columns - 1);
  std::vector<std::string> lines;
  std::string line;
  int used = 0;
  bool fresh = true;  // nothing but the hang stands in the line
  auto end_line = [&] {
    lines.push_back(line);
    line.assign(static_cast<std::size_t>(hang), ' ');
    used = hang;
    fresh = true;
  };
  while (!text.empty()) {
    const std::size_t blank = std::min(text.find(' '), text.size());
    std::string_view word = text.substr(0, blank);
    text.remove_prefix(std::min(blank + 1, text.size()));
    if (!fresh && used + 1 + seen(word) > columns) end_line();
    if (!fresh) line += ' ', ++used;
    while (used + seen(word) > columns) {
      const std::size_t n = cut_word(word, columns - used);
      line += word.substr(0, n);
      word.remove_prefix(n);
      end_line();
    }
    line += word;
    used += seen(word);
    fresh = false;
  }
  lines.push_back(line);
  return lines;
}

void Page::space() {
  if (!out_.empty() && !out_.ends_with("\n\n")) out_ += '\n';
}

void Page::text(std::string_view text, int indent, int hang) { beside({}, indent, text, hang); }

void Page::beside(std::string_view left, int column, std::string_view text, int hang) {
  std::string front = pad(fit(left), column);
  for (auto& part : wrap(fit(text), look_.width - column, hang)) {
    line(front + part);
    front.assign(static_cast<std::size_t>(column), ' ');
  }
}

void Page::line(std::string_view text) {
  std::string fitted = fit(text);
  fitted.erase(fitted.find_last_not_of(' ') + 1);
  out_ += fitted + '\n';
}

std::string Page::take() {
  std::string shown;
  for (char c : out_) {
    if (!is_style(c))
      shown += c == firm_blank ? ' ' : c;
    else if (look_.colour)
      shown += escape(c);
  }
  out_.clear();
  return shown;
}

}  // namespace sw::cli
