#pragma once
// Which of two judgements is cause and which effect. A requirement's subject are the ports it needs; its causes are the
// ports of its chain up to them. What moves with a port at once is read off the graph: a state or a switch keeps its
// value through an instant and hands nothing on in it, so that no ring of slow effects makes everything its own cause.
#include <set>
#include <vector>

#include "proof/judge.hpp"

namespace sw {

class Causes {
 public:
  Causes(const Graph& graph, const std::vector<Judged>& base);

  /// The subject of `a` stands among the causes of `b`, and not the other way round; in one duty, or `a` in none.
  bool told(std::size_t a, std::size_t b) const;
  /// Told so; else, where the chains say nothing, the graph leads from `a` to `b` alone. `b_turned`: `b` holds once its
  /// coupling is cut, and so comes after all that moves the port that was cut.
  bool before(std::size_t a, std::size_t b, bool b_turned) const;
  /// Whether `port` is one by which `a` is told as a cause of `b`.
  bool joint(std::size_t a, std::size_t b, std::string_view port) const;

 private:
  using Ports = std::set<std::string_view>;
  bool may(std::size_t a, std::size_t b) const;
  bool in_chain(std::size_t a, std::size_t b) const;
  bool flows(const Ports& from, const Ports& to) const;
  bool reaches(std::string_view from, std::string_view to) const;
  Ports subject_of(const Requirement& r) const;

  const Graph& graph_;
  const std::vector<Judged>& base_;
  std::vector<std::set<std::size_t>> moved_;  ///< by slot: what moves with it
  std::vector<Ports> subject_, causes_;       ///< by judgement
};

}  // namespace sw
