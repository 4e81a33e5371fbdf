#include <fstream>
#include <system_error>

#include "document/document.hpp"
#include "document/syntax.hpp"

namespace sw {

OpenText from_disk() {
  return [](const std::filesystem::path& file) -> std::optional<std::string> {
    std::error_code error;
    if (!std::filesystem::is_regular_file(file, error)) return std::nullopt;
    std::ifstream in(file, std::ios::binary);
    // One byte more than is allowed: enough for the parser to see that the text is too large.
    std::string text(text_limit::bytes + 1, '\0');
    in.read(text.data(), static_cast<std::streamsize>(text.size()));
    if (in.bad() || (in.fail() && !in.eof())) return std::nullopt;
    text.resize(static_cast<std::size_t>(in.gcount()));
    return text;
  };
}

}  // namespace sw
