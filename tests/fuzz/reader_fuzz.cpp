// Whatever bytes come in: the parsers, the reader, overlays, the shelf, the writer and the splicer must neither crash
// nor hang, and what they promise of their results is checked on the way.
#include <cstdint>
#include <cstdlib>

#include "document/document.hpp"
#include "field/sample_car.hpp"
#include "field/walk.hpp"

namespace {

using namespace sw;
using sample::Car;

void require(bool holds) {
  if (!holds) std::abort();
}

void say_all(const Diagnostics& faults, const std::vector<std::string>& files) {
  for (auto& d : faults.all()) require(say(d, files).find('\n') == std::string::npos);
}

/// Sound input, written and read again, is sound.
void there_and_back(const Car& car, const EvidenceMap& evidence) {
  Diagnostics faults;
  std::string text = write_toml(write(Car::fields(), &car, "", evidence));
  Car again;
  EvidenceMap evidence_again;
  read(parse_text(text, 0, false, faults), Car::fields(), &again, "", evidence_again, faults);
  require(!faults.any_fault());
}

void read_as(const std::string& text, bool json) {
  Diagnostics faults;
  Car car;
  EvidenceMap evidence;
  read(parse_text(text, 0, json, faults), Car::fields(), &car, "", evidence, faults);
  say_all(faults, {"f"});
  if (!faults.any_fault()) there_and_back(car, evidence);
  fill_defaults(Car::fields(), &car, "", evidence);
}

/// The text as a build over itself as its shelf and as its base.
void open_as(const std::string& text) {
  auto open = [&](const std::filesystem::path& file) -> std::optional<std::string> {
    if (file == "build.toml") return "base = \"base.toml\"\nshelf = \"shelf.toml\"\n" + text;
    return text;
  };
  auto doc = open_build("build.toml", Car::fields(), open, text);
  Car car;
  EvidenceMap evidence;
  read(doc.root, Car::fields(), &car, "", evidence, doc.faults);
  say_all(doc.faults, doc.files);
}

void splice_into(const std::string& text) {
  for (auto path : {"note", "cooling.radiator.core_width", "wiring.run.fan.gauge"}) {
    Diagnostics faults;
    std::vector<Edit> edits = {{path, "\"10 mm2\""}};
    auto out = splice(text, edits, faults);
    require(out.has_value() != faults.any_fault());
    say_all(faults, {"f"});
  }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  std::string text(reinterpret_cast<const char*>(data), size);
  read_as(text, true);
  read_as(text, false);
  open_as(text);
  splice_into(text);
  // A text as the new value of an edit.
  Diagnostics faults;
  std::vector<Edit> edits = {{"a.b", text}};
  splice("a = { c = 1 }\n", edits, faults);
  return 0;
}
