#include "model/resolver.hpp"

namespace sw {

std::string Resolver::path_of(const void* member) const {
  std::string found;
  each_leaf(fields_, root_, "", [&](const Leaf& leaf) {
    if (leaf.field->access.address && leaf.field->access.address(leaf.owner) == member) found = leaf.path;
  });
  return found;
}

const Evidence* Resolver::evidence_of(const void* member) const {
  auto it = evidence_->find(path_of(member));
  return it == evidence_->end() ? nullptr : &it->second;
}

}  // namespace sw
