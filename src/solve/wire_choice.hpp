#pragma once
// Which size and which fuse one wire of the car takes: what it must carry and may lose, and the first sold that does.
#include "solve/wire_load.hpp"

namespace sw {

class Choosing {
 public:
  enum class Kind : std::uint8_t { load, charge, crank, ground, feed };
  struct Wanted {
    const wiring::Conductor* wire;
    std::string path;  ///< of its table
    Kind kind;
    WireLoad load;
    double lasting_a = 0;  ///< what its fuse is chosen by
    double stall_a = 0, inrush_a = 0, inrush_s = 0;
    bool fuse = false;  ///< whether it must have one
  };
  struct Choice {
    std::string path;
    double area_m2, fuse_a;  ///< fuse 0: none
  };

  Choosing(const CarWires& wires, double nominal_v) : wires_(wires), per_12_(nominal_v / 12) {}
  std::vector<Wanted> wanted() const;
  /// What is drawn where it does; else the first that does; empty where none up to 4/0 does.
  std::optional<Choice> choose(const Wanted& w) const;
  std::string why_none(const Wanted& w) const;

 private:
  static bool starter_end(const wiring::Model& m, const wiring::dc::Branch& b);
  /// Runs of wire; measured ones and metal nobody chose are as they are.
  std::optional<Wanted> run(std::size_t i) const;
  /// Empty where none that is sold carries it.
  std::optional<double> fuse_for(const Wanted& w, const FieldInfo& field) const;
  bool fits(const Wanted& w, double area_m2, double rating) const;
  bool loses(const Wanted& w, double area_m2) const;

  const CarWires& wires_;
  double per_12_;
};

}  // namespace sw
