#include "model/caution.hpp"

namespace sw {
namespace {

struct Row {
  std::string_view name, text;
};
constexpr Row rows[] = {
    {"", ""},
    {"electrical fire",
     "An overloaded or unprotected wire can set the car on fire. Disconnect the battery before working, fuse every "
     "feed "
     "at its source, and follow the maker's instructions and local code."},
    {"battery gas and acid",
     "A charging battery gives off explosive gas and its acid burns. Ventilate, keep sparks and metal away, wear eye "
     "protection, and follow the battery maker's instructions."},
    {"fans start by themselves",
     "Electric fans can start at any moment, with the key off too. Disconnect them before hands go "
     "near, and follow the maker's instructions."},
    {"belts and pulleys",
     "Belts, pulleys and fans catch hands, hair and clothes, and an overspeeding rotor can burst. Work with the engine "
     "stopped and stay within the maker's speed limits."},
    {"hot coolant under pressure",
     "Hot coolant is under pressure and scalds. Open nothing before it has cooled; fit a cap no stronger than the "
     "weakest part allows, by its maker's figures."},
    {"carbon monoxide",
     "A running engine poisons the air of a closed room. Lead the exhaust outside, by the rules of "
     "the place and its licensed equipment."},
    {"refrigerant",
     "Refrigerant freezes skin and harms the air. Only licensed persons may charge or open the circuit."},
    {"car on a lift",
     "A car can roll or fall. Use rated stands on firm ground, where the car's maker "
     "has it lifted, and chock the wheels."},
    {"fuel fire",
     "Fuel vapour ignites from any spark. Relieve pressure as the maker instructs, ventilate, keep an "
     "extinguisher within reach; local code says where fuel may be drained and kept."},
    {"loss of braking",
     "A fault in the brakes can kill. Work to the makers' instructions and local code, have the work checked by a "
     "licensed person, and try the car at walking pace on closed ground before any road."},
    {"brake fluid",
     "Brake fluid burns eyes and paint, takes up water and must not be mixed with another kind. Use fresh fluid of the "
     "kind the maker names, from a sealed can."},
    {"brakes and old linings",
     "A fault in the brakes can kill, and old linings may hold asbestos. Never blow, brush or grind their dust; wet it "
     "and have it taken away as local code asks. Work to the makers' instructions, have the work checked by a licensed "
     "person, and try the car at walking pace on closed ground before any road."},
    {"wheels and tyres",
     "A wheel that fouls or a tyre past its load or age can fail at speed. Turn every wheel by hand from lock to lock "
     "and through its travel before driving; fit tyres by their maker's load and age limits."},
    {"runaway throttle",
     "A throttle that does not close runs away with the car. See it snap shut by itself, cold and hot, before the "
     "engine is started; the maker's instructions come first."},
    {"high voltage of the ignition",
     "Coil, leads and plugs carry tens of thousands of volts: they can kill and stop a pacemaker. Switch off and "
     "disconnect before touching, never draw a spark in the open, and follow the maker's instructions."},
    {"knock breaks engines",
     "Too much advance breaks pistons before it is heard. See the advance with a timing light at idle and at speed, "
     "car "
     "standing and no load, hands and clothes clear of belts and fan, before the engine is worked; stay within its "
     "maker's figures."},
    {"loss of steering",
     "Steering that binds, fouls or comes apart can kill. Work to the makers' instructions and local code, have the "
     "work checked by a licensed person, and turn it lock to lock by hand, engine rolled and car at full travel, "
     "before "
     "any road."},
    {"whirling shaft",
     "A propeller shaft that whirls or breaks comes through the floor. Stay below its limit, have it balanced, guard "
     "it "
     "with a loop, and never stand beside a turning one; the maker's limits come first."},
    {"car that moves by itself",
     "A car that starts in gear, or is in another than it shows, runs over people. Chock the wheels, set the brake, "
     "keep clear in front and behind, and try every gate as the maker's instructions ask."},
    {"bolts that let go",
     "A bolt of brakes, steering, wheels, belts or seats that lets go can kill. The maker's bolt, thread treatment, "
     "torque "
     "and order go before any figure here; a bolt made for one tightening is not used again; wheel nuts are looked at "
     "after the first miles."},
};

}  // namespace

std::string_view caution_name(Caution c) { return rows[static_cast<std::size_t>(c)].name; }
std::string_view caution_text(Caution c) { return rows[static_cast<std::size_t>(c)].text; }

std::string_view proof_limits() {
  return "A proof is an aid to judgement and not a certificate: it is as good as the figures it was given. The makers' "
         "instructions, local code and licensed practice come before it.";
}

}  // namespace sw
