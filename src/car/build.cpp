#include "car/build.hpp"

#include <array>

#include "car/car.hpp"
#include "field/stock.hpp"

namespace sw {
namespace {

/// A system's group: like group<…>, with the struct found by its type in the tuple.
template <class S>
FieldInfo system_group() {
  using Input = typename S::Input;
  FieldInfo f{.key = S::key, .label = S::title, .type = FieldType::group, .station = S::where};
  f.access.children = &Input::fields;
  f.access.child = [](const void* o) -> const void* { return &std::get<Input>(static_cast<const Build*>(o)->inputs); };
  f.access.child_to = [](void* o) -> void* { return &std::get<Input>(static_cast<Build*>(o)->inputs); };
  return f;
}

template <class... S>
std::vector<FieldInfo> groups(SystemList<S...>) {
  std::vector<FieldInfo> all{system_group<S>()...};
  all.push_back(
      list<&Build::duty>("duty", "duties").says("Duties of your own, in place of or beside the shipped ones."));
  return all;
}

}  // namespace

std::span<const FieldInfo> build_fields() {
  static const std::vector<FieldInfo> all = groups(Systems{});
  return all;
}

Opened read_build(const Document& document) {
  Opened out;
  out.files = document.files;
  out.faults = document.faults;
  out.build.shelf = std::make_shared<const std::vector<Node>>(document.shelves);
  // After a syntax error the tree is empty and adds nothing; after any other fault the rest is still looked at.
  read(document.root, build_fields(), &out.build, "", out.build.evidence, out.faults);
  for (auto& e : document.root.entries)
    if (e.value.type == Node::Type::table) out.build.tables.insert(e.key);
  out.build.spoilt = Spoilt(build_fields(), out.faults);
  fill_defaults(build_fields(), &out.build, "", out.build.evidence, out.build.spoilt);
  // What no single field can see: figures that cannot be together. Those that were read are looked at, whatever else
  // has a fault, so that all is told in one go.
  out.incomplete = document.incomplete;
  out.units = WrittenUnits(document.root, build_fields());
  if (!out.incomplete) {
    const Car car(out.build);
    for (auto& d : car.faults().all()) out.faults.fault(d.place, d.path, d.problem, d.hint);
  }
  out.faults.sort();
  return out;
}

Opened open(const std::filesystem::path& file, const OpenText& text) {
  Opened out = read_build(open_build(file, build_fields(), text, std::string(stock_text("shelf.toml"))));
  out.build.folder = file.parent_path();
  out.build.name = file.filename().string();
  return out;
}

}  // namespace sw
