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
     "Electric fans can start at any moment, with the key off too. Disconnect them before hands go near."},
    {"belts and pulleys",
     "Belts, pulleys and fans catch hands, hair and clothes, and an overspeeding rotor can burst. Work with the engine "
     "stopped and stay within the maker's speed limits."},
    {"hot coolant under pressure",
     "Hot coolant is under pressure and scalds. Open nothing before it has cooled; fit a cap no stronger than the "
     "weakest part allows, by its maker's figures."},
    {"carbon monoxide", "A running engine poisons the air of a closed room. Lead the exhaust outside."},
    {"refrigerant",
     "Refrigerant freezes skin and harms the air. Only licensed persons may charge or open the circuit."},
    {"car on a lift", "A car can roll or fall. Use rated stands on firm ground and chock the wheels."},
    {"fuel fire",
     "Fuel vapour ignites from any spark. Relieve pressure, ventilate, keep an extinguisher within reach."},
};

}  // namespace

std::string_view caution_name(Caution c) { return rows[static_cast<std::size_t>(c)].name; }
std::string_view caution_text(Caution c) { return rows[static_cast<std::size_t>(c)].text; }

std::string_view proof_limits() {
  return "A proof is an aid to judgement and not a certificate: it is as good as the figures it was given. The makers' "
         "instructions, local code and licensed practice come before it.";
}

}  // namespace sw
