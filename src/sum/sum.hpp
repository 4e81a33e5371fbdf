#pragma once
// The registry of quick sums: an entry names its arguments, its law and what the law is good for. Nothing else is
// written for a sum; terminal, page and API are made from the entry.
//
//   struct LmtdIn { std::optional<Temperature> t_hot_in; … };      plain, all members may be empty
//   struct LmtdOut { std::optional<TemperatureStep> lmtd; … };     what stays empty is not shown
//   constexpr Argument lmtd_in[] = {quantity<&LmtdIn::t_hot_in>("t_hot_in", "hot side in", kind::temperature), …};
//   constexpr Argument lmtd_out[] = {…};
//   void lmtd(const LmtdIn& in, LmtdOut& out, Remarks& say) { … }  only called when all that is needed is there
//   entry<lmtd>({.name = "lmtd", .inputs = lmtd_in, .outputs = lmtd_out, .range = "…", .source = "…"})
#include <array>
#include <memory>
#include <string>
#include <string_view>

#include "sum/argument.hpp"

namespace sw {

/// How many of some keys must be given. Keys named in a rule are not needed by themselves.
struct Rule {
  int least = 1, most = 1;
  std::array<std::string_view, 8> keys{};
  bool together = false;  ///< all or none
};
template <class... K>
constexpr Rule one_of(K... keys) {
  return {1, 1, {std::string_view(keys)...}};
}
template <class... K>
constexpr Rule two_of(K... keys) {
  return {2, 2, {std::string_view(keys)...}};
}
template <class... K>
constexpr Rule at_most_one_of(K... keys) {
  return {0, 1, {std::string_view(keys)...}};
}
template <class... K>
constexpr Rule all_or_none_of(K... keys) {
  return {0, static_cast<int>(sizeof...(K)), {std::string_view(keys)...}, true};
}

/// What a law or a check has to say beside its outputs.
class Remarks {
 public:
  struct Fault {
    std::string key, problem, hint;
  };

  explicit Remarks(std::vector<std::string> keys = {}) : keys_(std::move(keys)) {}
  /// The key stood among the arguments, read well or not.
  bool given(std::string_view key) const;
  /// A value, or a set of them, that cannot be (exit 2, no result).
  void fault(std::string_view key, std::string problem, std::string hint = {});
  /// `key` is needed because of `why`; silent where it was given but could not be read, which is a fault already.
  void need(std::string_view key, std::string why);
  /// The inputs lie outside the law's range (exit 3; the result is shown, marked).
  void outside(std::string sentence);
  /// A remark that stands with the result.
  void note(std::string sentence);

  const std::vector<Fault>& faults() const { return faults_; }
  const std::vector<std::string>& outside() const { return outside_; }
  const std::vector<std::string>& notes() const { return notes_; }

 private:
  std::vector<std::string> keys_;
  std::vector<Fault> faults_;
  std::vector<std::string> outside_, notes_;
};

struct Sum {
  std::string_view name;   ///< `pipe-loss`
  std::string_view title;  ///< "Pressure lost along a pipe"
  std::span<const Argument> inputs, outputs;
  std::span<const Rule> rules = {};
  std::string_view range;   ///< what the law is good for
  std::string_view source;  ///< standard or book, edition, table
  std::string_view caution = {};
  std::string_view notes = {};
  /// Set by `entry`.
  std::shared_ptr<void> (*make_in)() = nullptr;
  std::shared_ptr<void> (*make_out)() = nullptr;
  void (*check)(const void* in, Remarks&) = nullptr;
  void (*law)(const void* in, void* out, Remarks&) = nullptr;
};

namespace sum_detail {
template <class>
struct LawOf;
template <class I, class O>
struct LawOf<void (*)(const I&, O&, Remarks&)> {
  using In = I;
  using Out = O;
};
}  // namespace sum_detail

/// The entry of a law. `Check` sees the inputs even where some are missing and says what is (`say.need(…)`) or what
/// contradicts; it runs with every other check, so that all faults come at once.
template <auto Law, auto Check = nullptr>
constexpr Sum entry(Sum s) {
  using In = typename sum_detail::LawOf<decltype(Law)>::In;
  using Out = typename sum_detail::LawOf<decltype(Law)>::Out;
  s.make_in = []() -> std::shared_ptr<void> { return std::make_shared<In>(); };
  s.make_out = []() -> std::shared_ptr<void> { return std::make_shared<Out>(); };
  s.law = [](const void* in, void* out, Remarks& say) {
    Law(*static_cast<const In*>(in), *static_cast<Out*>(out), say);
  };
  if constexpr (Check != nullptr)
    s.check = [](const void* in, Remarks& say) { Check(*static_cast<const In*>(in), say); };
  return s;
}

/// Every sum, in the order of the list in list.cpp, the one place that names the families.
std::span<const Sum* const> all_sums();
/// The sum of that name, or null.
const Sum* find_sum(std::string_view name);

}  // namespace sw
