#include "model/resolver.hpp"

#include <algorithm>

namespace sw {

Resolver::Resolver(std::span<const FieldInfo> fields, const void* root, const EvidenceMap& evidence,
                   const Spoilt* spoilt)
    : evidence_(&evidence), spoilt_(spoilt) {
  each_leaf(fields, root, "", [&](const Leaf& leaf) {
    if (leaf.field->access.address) paths_[leaf.field->access.address(leaf.owner)] = leaf.path;
  });
}

std::string Resolver::path_of(const void* member) const {
  const auto found = paths_.find(member);
  return found == paths_.end() ? std::string() : found->second;
}

void Resolver::fault(const void* member, std::string problem, std::string hint,
                     std::initializer_list<const void*> beside) {
  const auto path = path_of(member);
  const Evidence* e = evidence_of(member);
  missing_.push_back(path);
  if (spoilt(path) || std::any_of(beside.begin(), beside.end(), [&](auto* m) { return spoilt(path_of(m)); })) return;
  faults_.fault(e ? e->place : Place{}, path, std::move(problem), std::move(hint));
}

void Resolver::fault_at(std::string path, std::string problem, std::string hint) {
  // The place of the first figure below it, so that the message points into the right file.
  auto it = evidence_->lower_bound(path + ".");
  const bool below = it != evidence_->end() && it->first.starts_with(path + ".");
  missing_.push_back(path);
  faults_.fault(below ? it->second.place : Place{}, std::move(path), std::move(problem), std::move(hint));
}

const Evidence* Resolver::evidence_of(const void* member) const {
  auto it = evidence_->find(path_of(member));
  return it == evidence_->end() ? nullptr : &it->second;
}

}  // namespace sw
