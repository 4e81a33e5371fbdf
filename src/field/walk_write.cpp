// An object as a tree of texts that read back to the same object and evidence.
#include <cmath>

#include "field/measure.hpp"
#include "field/walk.hpp"
#include "field/words.hpp"
#include "quantity/print.hpp"

namespace sw {

namespace {

Node text_node(std::string text) {
  Node node;
  node.type = Node::Type::text;
  node.text = std::move(text);
  return node;
}

Node number_node(double value) {
  Node node;
  node.type = value == std::trunc(value) && std::abs(value) < 1e15 ? Node::Type::integer : Node::Type::real;
  node.number = value;
  node.text = exact_number(value);
  return node;
}

Node figure_node(double si, const Kind& kind, std::string_view unit) {
  return is_pure(kind) ? number_node(si) : text_node(print_exact(si, kind, unit));
}

std::string_view unit_x_of(const FieldInfo& f) {
  return f.unit_x.empty() && !f.kind_x->units.empty() ? f.kind_x->units[0] : f.unit_x;
}

Node curve_node(const Curve& curve, const FieldInfo& f) {
  Node rows;
  rows.type = Node::Type::array;
  for (std::size_t i = 0; i < curve.x.size(); ++i) {
    Node row;
    row.type = Node::Type::array;
    row.items.push_back(figure_node(curve.x[i], *f.kind_x, unit_x_of(f)));
    row.items.push_back(figure_node(curve.y[i], *f.kind, unit_of(f)));
    rows.items.push_back(std::move(row));
  }
  return rows;
}

Node names_node(const std::vector<std::string>& names) {
  Node node;
  node.type = Node::Type::array;
  for (auto& name : names) node.items.push_back(text_node(name));
  return node;
}

Node plain_figure(double si, const FieldInfo& f) {
  if (f.type == FieldType::choice) return text_node(std::string(f.choices[static_cast<std::size_t>(si)]));
  if (f.type != FieldType::yes_no) return figure_node(si, *f.kind, unit_of(f));
  Node node;
  node.type = Node::Type::yes_no;
  node.number = si;
  node.text = si != 0 ? "true" : "false";
  return node;
}

/// The value alone; empty where there is none.
std::optional<Node> plain(const Leaf& leaf) {
  auto& f = *leaf.field;
  if (f.type == FieldType::text) {
    auto* text = f.access.text(leaf.owner);
    return text->empty() ? std::nullopt : std::optional(text_node(*text));
  }
  if (f.type == FieldType::names) {
    auto* names = f.access.names(leaf.owner);
    return names->empty() ? std::nullopt : std::optional(names_node(*names));
  }
  if (f.type == FieldType::curve) {
    auto* curve = f.access.curve(leaf.owner);
    return *curve ? std::optional(curve_node(**curve, f)) : std::nullopt;
  }
  auto si = f.access.get(leaf.owner);
  return si ? std::optional(plain_figure(*si, f)) : std::nullopt;
}

void add(Node& table, std::string key, Node value) { table.entries.push_back({std::move(key), {}, std::move(value)}); }

Node plus_minus_node(const Evidence& e, const FieldInfo& f) {
  if (f.type == FieldType::curve) return text_node(exact_number(e.half_width * 100) + " %");
  auto& kind = step_kind(*f.kind);
  return figure_node(e.half_width, kind, &kind == f.kind || !f.kind->wire_gauge ? unit_of(f) : kind.units[0]);
}

Node with_evidence(Node value, const Evidence& e, const FieldInfo& f) {
  if (e.source == Source::stated && !e.given_width && e.part.empty()) return value;
  Node table;
  add(table, f.type == FieldType::curve ? "points" : "value", std::move(value));
  add(table, "from", text_node(std::string(name_of(e.source))));
  if (e.given_width) add(table, "plus_minus", plus_minus_node(e, f));
  if (!e.part.empty()) add(table, "part", text_node(e.part));
  return table;
}

}  // namespace

Node write(std::span<const FieldInfo> fields, const void* owner, std::string_view path, const EvidenceMap& evidence) {
  Node table;
  for (auto& f : fields) {
    std::string child_path = below(path, f.key);
    if (f.type == FieldType::group) {
      auto* child = f.access.child(owner);
      if (!child) continue;
      Node group = write(f.access.children(), child, child_path, evidence);
      // An optional group that is there says so even where nothing is known of it.
      if (f.access.optional || !group.entries.empty()) add(table, std::string(f.key), std::move(group));
    } else if (f.type == FieldType::list) {
      Node list;
      for (std::size_t i = 0; i < f.access.count(owner); ++i) {
        auto name = f.access.name(owner, i);
        add(list, std::string(name),
            write(f.access.children(), f.access.item(owner, i), below(child_path, name), evidence));
      }
      if (!list.entries.empty()) add(table, std::string(f.key), std::move(list));
    } else {
      auto known = evidence.find(child_path);
      if (known != evidence.end() && known->second.defaulted) continue;
      auto value = plain({child_path, &f, owner});
      if (!value) continue;
      if (known != evidence.end()) value = with_evidence(std::move(*value), known->second, f);
      add(table, std::string(f.key), std::move(*value));
    }
  }
  return table;
}

}  // namespace sw
