#pragma once
// A block: one evaluation step of a system inside the coupled car. It reads ports and states, and writes ports and the
// rates of its own states. Blocks know nothing of each other; the graph joins and orders them.
#include <memory>
#include <span>
#include <string>

#include "model/duty.hpp"
#include "model/port.hpp"

namespace sw {

/// What a block sees of one evaluation: values by position in its own lists. Positions are the enumerators each
/// block file declares beside its lists, in the same order.
class View {
 public:
  View(double* values, const std::uint16_t* reads, const std::uint16_t* writes, const std::uint16_t* rates,
       void* scratch)
      : values_(values), reads_(reads), writes_(writes), rates_(rates), scratch_(scratch) {}
  double in(int i) const { return values_[reads_[i]]; }
  double out(int i) const { return values_[writes_[i]]; }
  void set(int i, double x) { values_[writes_[i]] = x; }
  /// Time derivative of the block's state `i`, per second.
  void rate(int i, double x) { values_[rates_[i]] = x; }
  template <class T>
  T& scratch() {
    return *static_cast<T*>(scratch_);
  }

 private:
  double* values_;
  const std::uint16_t *reads_, *writes_, *rates_;
  void* scratch_;
};

/// In which of a duty's methods a state is alive; elsewhere it keeps its starting value.
enum Alive : unsigned { in_thermal = 1, in_crank = 2, in_pull = 4, in_rest = 8, in_all = 15 };

/// A state: a port whose value the integrator carries. `start` gives its value where a duty begins from rest.
struct StateInfo {
  Port port;
  double (*start)(const void* model, const Duty& duty);
  double scale;  ///< SI size of a change that matters: the unit of the step error
  unsigned alive = in_thermal | in_pull;
};

/// A switch: a port with a few whole values that changes only between steps. `next` returns the value wanted for the
/// present view; `guard` is positive exactly when `next` differs from `now`, and crosses zero continuously, so that
/// the step can be cut at the event.
struct SwitchInfo {
  Port port;
  double (*start)(const void* model, const Duty& duty);
  double (*next)(const void* model, const View& view, double now);
  double (*guard)(const void* model, const View& view, double now);
};

/// The range in which a law of a block is good: SI values of a port the block reads or writes. A run that leaves it has
/// no figure for what the block writes nor for what comes of that (proof/validity).
struct ValidRange {
  double low, high;
};
struct Validity {
  std::string_view port;
  ValidRange range;                               ///< where it is the law's own
  std::string_view law;                           ///< in the plural, as it stands in a reason: "the coolant's figures"
  ValidRange (*of)(const void* model) = nullptr;  ///< where it is the part's: read instead of `range`
  std::string_view when = {};                     ///< a port the block reads: the law counts only where it is above 0
  ValidRange at(const void* model) const { return of ? of(model) : range; }
};

struct Block {
  std::string_view name;        ///< `cooling.loop`
  std::span<const Port> reads;  ///< the block's inputs, its own states and switches among them
  std::span<const Port> writes;
  std::span<const StateInfo> states;  ///< their rates are written with View::rate
  std::span<const SwitchInfo> switches;
  void (*evaluate)(const void* model, View& view);
  std::shared_ptr<void> (*scratch)(const void* model) = nullptr;  ///< working memory of one run, made before it
  /// A port this block writes that blocks before it read: the loop is torn there and closed by a bracketed root in
  /// `tear_low`..`tear_high`. Empty: none.
  std::string_view tear = {};
  double tear_low = 0, tear_high = 0;
  std::span<const Validity> validity = {};
  /// Why the last evaluation gave no figures, in words with what is left over and where; empty where it gave some. It
  /// is asked where a port the block writes holds no number, and ends in the reason of every finding of that run.
  std::string (*trouble)(const void* model, const void* scratch) = nullptr;
};

}  // namespace sw
