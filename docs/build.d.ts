export type Source = "stated" | "measured" | "data sheet" | "typical" | "chosen" | "solved" | "road test";
/** What may stand beside a value. */
export interface Evidence { from?: Source; plus_minus?: string | number; part?: string; note?: string }
export type Given<T> = T | ({ value: T } & Evidence);
export type Rows = [string | number, string | number][];
export type CurveGiven = Rows | ({ points: Rows } & Evidence);

export interface Build {
  /** car and road load */
  vehicle?: {
    /** title: What the car is called in the shop. */
    title?: Given<string>;
    /** system voltage: Nominal voltage the whole car is wired for. */
    system_voltage?: Given<"6 V" | "12 V">;
    /** earth: Battery post that is joined to the body. */
    earth?: Given<"negative" | "positive">;
    /** weight: Weight as driven, with driver and fuel. */
    weight?: Given<string>;
    /** drag area: Drag coefficient times frontal area. */
    drag_area?: Given<string>;
    /** rolling resistance: Rolling resistance over weight. */
    rolling?: Given<number | string>;
    note?: string;
  };
  /** engine */
  engine?: {
    /** displacement: Swept volume of all cylinders. */
    displacement?: Given<string>;
    /** hot idle speed: Idle speed hot, as the car is held at a light (in gear with an automatic). */
    idle_speed?: Given<string>;
    /** idle speed with air conditioning: The same with the compressor engaged; where it is not given the idle speed is taken to hold. */
    idle_speed_air_conditioning?: Given<string>;
    /** red line: Greatest engine speed the driver will use. */
    red_line?: Given<string>;
    /** torque curve: Full-throttle torque against engine speed. */
    torque_curve?: CurveGiven;
    /** specific fuel consumption: Fuel for shaft power at full throttle. */
    bsfc?: Given<string>;
    /** fuel at idle: Fuel burnt at hot idle without load. */
    idle_fuel?: Given<string>;
    /** usual fuel at idle: Fuel at idle over the usual 0.6 lb/h a litre; stands in, with its doubt, for an idle fuel nobody measured. */
    usual_idle_fuel?: Given<number | string>;
    /** share of heat to coolant at load: Share of the heat of the fuel burnt for power that goes into the coolant. */
    coolant_share?: Given<number | string>;
    /** share of heat to coolant at idle: Share of the heat of the fuel burnt at idle without load that goes into the coolant; measure `coolant_heat` where an idle duty is close. */
    idle_coolant_share?: Given<number | string>;
    /** heat to coolant: Heat to the coolant against shaft power, where it is known; takes the place of the share. */
    coolant_heat?: CurveGiven;
    /** share of heat to oil: Share of the fuel's heat that friction puts into the oil. */
    oil_share?: Given<number | string>;
    /** share of heat to the engine bay: Share of the fuel's heat that manifolds and block give to the air under the bonnet. */
    bay_share?: Given<number | string>;
    /** engine mass that warms: Mass of block and heads; about two thirds of the dressed engine. */
    metal_mass?: Given<string>;
    /** oil: Oil in the sump. */
    oil_volume?: Given<string>;
    /** hottest metal above coolant: How far the hottest coolant-side metal lies above the coolant at a third of full power. */
    metal_rise?: Given<string>;
    /** highest oil temperature: Highest sump temperature wanted. */
    highest_oil?: Given<string>;
    note?: string;
  };
  /** driveline */
  driveline?: {
    /** gearbox: Manual, or automatic with a torque converter. */
    gearbox?: Given<"manual" | "automatic">;
    /** gears: Forward gears, by any names. */
    gear?: Record<string, {
      /** ratio: Turns of the input for one of the output. */
      ratio?: Given<number | string>;
      note?: string;
    }>;
    /** axle ratio: Turns of the propeller shaft for one of the wheels. */
    axle?: Given<number | string>;
    /** tyre diameter: Twice the rolling radius under load. */
    tyre_diameter?: Given<string>;
    /** efficiency: Share of the engine's power that reaches the wheels, slip apart. */
    efficiency?: Given<number | string>;
    /** converter slip: Turns lost in the unlocked converter at steady load, as a share of its output's. */
    converter_slip?: Given<number | string>;
    /** converter locks in top: Whether the converter is locked in the top gear. */
    locks_in_top?: Given<boolean>;
    /** gearbox cooler in the radiator: Whether gearbox heat goes into the coolant. */
    cooler_in_radiator?: Given<boolean>;
    /** lugging speed: Engine speed below which a gear is not held on the level. */
    lugging_speed?: Given<string>;
    note?: string;
  };
  /** belt drive */
  belts?: {
    /** belts: Belts, by any names. */
    belt?: Record<string, {
      /** section: V-belt or ribbed belt. Told only: nothing is computed from it yet. */
      section?: Given<"v" | "ribbed">;
      /** belts side by side: How many equal belts run side by side. */
      count?: Given<number | string>;
      /** crank pulley: Pitch diameter of the crank pulley this belt runs on. */
      crank_diameter?: Given<string>;
      /** tension: Tension of a strand at rest (fixed), or held in the slack strand (sprung). */
      tension?: Given<string>;
      /** tensioner: Fixed centres, or a sprung arm on the slack side. */
      tensioner?: Given<"fixed" | "sprung">;
      /** friction: Belt on pulley. */
      friction?: Given<number | string>;
      /** groove angle: Whole angle of the groove; 180 deg is flat. */
      groove?: Given<string>;
      /** pulleys: What this belt drives. */
      pulley?: Record<string, {
        /** drives: What the pulley turns. */
        drives?: Given<"alternator" | "coolant pump" | "fan" | "compressor" | "steering" | "idler">;
        /** diameter: Pitch diameter: where the belt's cords run. */
        diameter?: Given<string>;
        /** wrap: Angle the belt lies on the pulley. */
        wrap?: Given<string>;
        /** side: Whether it runs on the belt's face (ribs or grooves) or on its back. */
        side?: Given<"face" | "back">;
        note?: string;
      }>;
      note?: string;
    }>;
    note?: string;
  };
  /** charging and starting */
  charging?: {
    /** alternator: The machine that charges. */
    alternator?: {
      /** machine: Alternator, or a generator with its regulator box. No usual curve of output stands in for a generator's. */
      machine?: Given<"alternator" | "generator">;
      /** earth: Which side of the machine is joined to its case. */
      earth?: Given<"negative" | "positive" | "isolated">;
      /** rated current: Current at 6000 rpm of its own, 13.5 V, cold. */
      rated_current?: Given<string>;
      /** output curve: Current against its own speed, cold; ask the supplier for it. Without it a usual shape is scaled from the rated current. */
      output_curve?: CurveGiven;
      /** usual output shape: Output over that of a usual machine of the same rating; stands in, with its doubt, for a curve nobody gave. */
      usual_shape?: Given<number | string>;
      /** hot output: Output hot over output cold. */
      hot_share?: Given<number | string>;
      /** hot air: Air temperature the hot output is meant at. */
      hot_air?: Given<string>;
      /** highest speed: Continuous speed limit of the rotor. */
      highest_speed?: Given<string>;
      /** efficiency: Electric power over shaft power. */
      efficiency?: Given<number | string>;
      /** winding rise: Winding above the air it draws, at the most it can give. */
      temperature_rise?: Given<string>;
      /** highest winding temperature: Limit of the insulation. */
      highest_temperature?: Given<string>;
      /** regulator voltage: Set-point at 25 degC. */
      regulator_voltage?: Given<string>;
      /** regulator slope: Change of the set-point with its temperature. */
      regulator_slope?: Given<string>;
      /** shelf part that gives what is not given here */
      part?: string;
      note?: string;
    };
    /** battery: The battery. */
    battery?: {
      /** capacity: Charge at the 20 hour rate. */
      capacity?: Given<string>;
      /** cold cranking current: Current at -18 degC for 30 s, a cell not below 1.2 V; not used where the resistance is measured. */
      cold_crank_current?: Given<string>;
      /** internal resistance: Measured at about 25 degC, charged; without it, from the cold cranking current. */
      resistance?: Given<string>;
      /** shelf part that gives what is not given here */
      part?: string;
      note?: string;
    };
    /** starter: The starter. */
    starter?: {
      /** cranking current: Current while cranking the warm engine at 20 degC. */
      current?: Given<string>;
      /** at volts: Volts at the starter while it draws that; without it 10 V in a 12 V car, 5 V in a 6 V car. */
      voltage?: Given<string>;
      /** cranking speed: Engine speed it then turns. */
      crank_speed?: Given<string>;
      /** winding resistance: Resistance of winding and brushes. */
      resistance?: Given<string>;
      /** least cranking speed: Slowest cranking it will start at. */
      least_crank_speed?: Given<string>;
      /** shelf part that gives what is not given here */
      part?: string;
      note?: string;
    };
    /** least volts while cranking: Least volts at the battery while cranking; without it 9.6 V at 70 degF falling to 8.5 V at 0 degF, half of that in a 6 V car. */
    least_crank_voltage?: Given<string>;
    /** days between drives: How long it must stand and still start. */
    days_between_drives?: Given<string>;
    note?: string;
  };
  /** wiring */
  wiring?: {
    /** regulator senses at: Where the regulator measures: its own stud, the bus, or the battery. */
    sense?: Given<"own stud" | "bus" | "battery">;
    /** runs: Conductors between nodes. */
    run?: Record<string, {
      /** from: Node it starts at: battery, ground, alternator, block, bus, body, starter, case (the alternator's, where its bracket is no sure way to the block), or one of your own. */
      from?: Given<string>;
      /** to: Node it ends at. */
      to?: Given<string>;
      /** wire size: Conductor size. */
      gauge?: Given<string>;
      /** length: Length of the conductor. */
      length?: Given<string>;
      /** joints: Connectors, switch and ends together. */
      joints?: Given<string>;
      /** fuse: Rating of the fuse or fusible link at its source. */
      fuse?: Given<string>;
      /** no fuse: True where no fuse or link protects it at all. */
      unfused?: Given<boolean>;
      /** insulation: Temperature rating of the insulation; an old car's is 60 to 80 degC. */
      insulation?: Given<string>;
      /** zone: Where most of it lies. */
      zone?: Given<"cabin" | "engine bay">;
      /** conductors in the bundle: Conductors that carry current side by side; of a wire alone 1. */
      bundle?: Given<number | string>;
      /** measured resistance: End to end, where it was measured; takes the place of gauge, length and joints. */
      resistance?: Given<string>;
      /** rated current: Rating of what stands in the run besides wire: ammeter, bulkhead connector, link. */
      limit?: Given<string>;
      note?: string;
    }>;
    /** loads: What uses current, the fans apart. */
    load?: Record<string, {
      /** current: Current it takes at its rated volts. */
      current?: Given<string>;
      /** at volts: Volts at which it takes that; without it 13.5 V in a 12 V car, 6.75 V in a 6 V car. */
      at_voltage?: Given<string>;
      /** behaviour: How its current follows the volts. */
      behaviour?: Given<"current" | "resistance" | "power" | "motor" | "lamp">;
      /** when: When it is on: always, key, running, air-conditioning, night, rain, heat, brake, start; any of them. */
      when?: Given<string[]>;
      /** share of time: Share of the time it is on while it is on. */
      share?: Given<number | string>;
      /** least volts: Least volts it works at. */
      least_voltage?: Given<string>;
      /** fed from: Node it is fed from; without it bus. */
      from?: Given<string>;
      /** grounded to: Node it is grounded to; without it body. */
      to?: Given<string>;
      /** wire size: Conductor size. */
      gauge?: Given<string>;
      /** length: Length of the conductor. */
      length?: Given<string>;
      /** joints: Connectors, switch and ends together. */
      joints?: Given<string>;
      /** fuse: Rating of the fuse or fusible link at its source. */
      fuse?: Given<string>;
      /** no fuse: True where no fuse or link protects it at all. */
      unfused?: Given<boolean>;
      /** insulation: Temperature rating of the insulation; an old car's is 60 to 80 degC. */
      insulation?: Given<string>;
      /** zone: Where most of it lies. */
      zone?: Given<"cabin" | "engine bay">;
      /** conductors in the bundle: Conductors that carry current side by side; of a wire alone 1. */
      bundle?: Given<number | string>;
      note?: string;
    }>;
    /** fan feed: Feed and ground of the electric fans. */
    fans?: {
      /** fed from: Node the fans are fed from; without it bus. */
      from?: Given<string>;
      /** grounded to: Node the fans are grounded to; without it body. */
      to?: Given<string>;
      /** wire size: Conductor size. */
      gauge?: Given<string>;
      /** length: Length of the conductor. */
      length?: Given<string>;
      /** joints: Connectors, switch and ends together. */
      joints?: Given<string>;
      /** fuse: Rating of the fuse or fusible link at its source. */
      fuse?: Given<string>;
      /** no fuse: True where no fuse or link protects it at all. */
      unfused?: Given<boolean>;
      /** insulation: Temperature rating of the insulation; an old car's is 60 to 80 degC. */
      insulation?: Given<string>;
      /** zone: Where most of it lies. */
      zone?: Given<"cabin" | "engine bay">;
      /** conductors in the bundle: Conductors that carry current side by side; of a wire alone 1. */
      bundle?: Given<number | string>;
      /** feed and ground together: Stand-in for a fan feed whose wire size is not known yet; not used where it is. */
      resistance?: Given<string>;
      note?: string;
    };
    note?: string;
  };
  /** cooling */
  cooling?: {
    /** radiator: The radiator. */
    radiator?: {
      /** core width: Width of the finned face. */
      core_width?: Given<string>;
      /** core height: Height of the finned face. */
      core_height?: Given<string>;
      /** conductance: UA of the whole core at the air speed below; from the maker's rated heat and temperatures. */
      conductance?: Given<string>;
      /** at air speed: Face air speed the conductance is meant at. */
      conductance_speed?: Given<string>;
      /** exponent of air speed: Conductance goes with air speed to this power. */
      conductance_exponent?: Given<number | string>;
      /** blocked share: Share of the tubes silted up. */
      blocked_share?: Given<number | string>;
      /** airflow loss: Pressure lost in core, condenser and grille against face air speed; without it a usual core. It counts where a fan's curve is given. */
      airflow_loss?: CurveGiven;
      /** usual airflow loss: Airflow loss over that of a usual core with condenser and grille; stands in, with its doubt, for a curve nobody gave. */
      usual_loss?: Given<number | string>;
      /** radiator volume: Coolant in the radiator. */
      volume?: Given<string>;
      /** shelf part that gives what is not given here */
      part?: string;
      note?: string;
    };
    /** coolant pump: The coolant pump. */
    pump?: {
      /** flow: Flow through this car's circuit, thermostat open, at the pump speed below. */
      flow?: Given<string>;
      /** at pump speed: Pump speed the flow and power are meant at. */
      at_speed?: Given<string>;
      /** power: Shaft power at that speed. */
      power?: Given<string>;
      /** rotation: Which way the impeller must turn. */
      rotation?: Given<"with crank" | "against crank" | "either">;
      /** flow when reversed: Share of the flow an impeller gives turned the wrong way. */
      reversed_share?: Given<number | string>;
      /** flow needed at idle: Least flow at idle the engine or radiator maker asks for. */
      needed_at_idle?: Given<string>;
      /** shelf part that gives what is not given here */
      part?: string;
      note?: string;
    };
    /** thermostat: The thermostat. */
    thermostat?: {
      /** opens: Temperature at which it begins to open. */
      opens?: Given<string>;
      /** fully open: Temperature at which it is fully open; without it opening plus travel. */
      fully_open?: Given<string>;
      /** travel: From beginning to open to fully open; not used where that is given. */
      travel?: Given<string>;
      /** lag: Time constant of the wax. */
      lag?: Given<string>;
      /** shelf part that gives what is not given here */
      part?: string;
      note?: string;
    };
    /** cap: Cap and what the system stands. */
    cap?: {
      /** cap: Pressure at which the cap opens. */
      pressure?: Given<string>;
      /** weakest part: Lowest pressure rating of radiator, heater core and hoses. */
      weakest_part?: Given<string>;
      /** recovery bottle: Room in the recovery bottle or tank above the cold mark. */
      expansion_tank?: Given<string>;
      note?: string;
    };
    /** fans: Fans, by any names. */
    fan?: Record<string, {
      /** drive: Electric, or turned by the engine's belt. */
      drive?: Given<"electric" | "engine">;
      /** installed flow: Air through this core and shroud, standing, not the free-air figure of the box; not used where the curve below is given. */
      flow?: Given<string>;
      /** fan curve: Pressure against flow of the fan itself at its rated volts or speed, from its maker's sheet; with the core's airflow loss it gives the installed flow. */
      curve?: CurveGiven;
      /** at volts: Volts at the motor that flow and current are meant at; without it 13.5 V in a 12 V car, 6.75 V in a 6 V car. */
      at_voltage?: Given<string>;
      /** current: Current of the motor at those volts. */
      current?: Given<string>;
      /** at fan speed: Speed of an engine-driven fan that the flow is meant at. */
      at_speed?: Given<string>;
      /** power: Shaft power of an engine-driven fan at that speed. */
      power?: Given<string>;
      /** free flow: Free-air flow over installed flow; not used where the fan's curve is given. */
      free_flow_ratio?: Given<number | string>;
      /** on at: Coolant temperature that switches it on. */
      on?: Given<string>;
      /** off at: Coolant temperature that switches it off. */
      off?: Given<string>;
      /** on with air conditioning: Whether the controller keeps it on while the compressor is. */
      with_air_conditioning?: Given<boolean>;
      /** blows: Direction of its air at the core. */
      blows?: Given<"with travel" | "against travel">;
      /** flow when reversed: Share of the flow the blades give turned backwards. */
      reversed_share?: Given<number | string>;
      /** shelf part that gives what is not given here */
      part?: string;
      note?: string;
    }>;
    /** coolant: Coolant in the whole system. */
    coolant?: Given<string>;
    /** glycol: Share of ethylene glycol by volume; the fluid tables end at 60 % by mass. */
    glycol?: Given<number | string>;
    /** shroud cover: Share of the core the fans draw through, standing. */
    shroud_cover?: Given<number | string>;
    /** ram air: Face air speed over road speed, fans turning freely. */
    ram_share?: Given<number | string>;
    /** hot-air return: Rise of the air before the core by hot air coming round, standing. */
    recirculation?: Given<string>;
    /** highest coolant temperature: Highest coolant temperature wanted. */
    highest_coolant?: Given<string>;
    /** engine bay at hot idle: Air at the alternator after a long idle on a 40 degC day, where it was measured (on another day: its rise over that day's air, put on 40 degC); takes the place of the computed one while the car stands. */
    bay_temperature?: Given<string>;
    note?: string;
  };
  /** air conditioning */
  air_conditioning?: {
    /** fitted: Whether the car has it. */
    fitted?: Given<boolean>;
    /** condenser heat at idle: Heat the condenser gives to the air before the radiator, standing. */
    condenser_heat_idle?: Given<string>;
    /** condenser heat on the road: The same at road speed. */
    condenser_heat_road?: Given<string>;
    /** compressor power at idle: Shaft power of the compressor at idle. */
    compressor_power_idle?: Given<string>;
    /** compressor power on the road: Shaft power of the compressor at road speed. */
    compressor_power_road?: Given<string>;
    note?: string;
  };
  /** fuel */
  fuel?: {
    /** tank: What the tank holds when full. */
    tank?: Given<string>;
    note?: string;
  };
  /** vacuum and breathing */
  vacuum?: {
    /** idle vacuum: Manifold vacuum at a hot idle, in gear where the gearbox is automatic. */
    idle?: Given<string>;
    note?: string;
  };
  /** brakes */
  brakes?: {
    /** pedal ratio: Foot travel over push-rod travel. */
    pedal_ratio?: Given<number | string>;
    note?: string;
  };
  /** wheels and tyres */
  wheels?: {
    /** rim width: Width of the rim between its bead seats. */
    rim_width?: Given<string>;
    note?: string;
  };
  /** duties: Duties of your own, in place of or beside the shipped ones. */
  duty?: Record<string, {
    /** title: What the car is asked to do, in a few words. */
    title?: Given<string>;
    /** method: Which states are alive and how time is stepped: thermal, crank, pull or rest. */
    method?: Given<"thermal" | "crank" | "pull" | "rest">;
    /** engine: Whether the engine runs, is cranked or stands. */
    engine?: Given<"running" | "cranking" | "off">;
    /** duration: How long it lasts. */
    duration?: Given<string>;
    /** air temperature: Temperature of the air the car stands or drives in. */
    ambient?: Given<string>;
    /** altitude: Height above sea level (geometric). */
    altitude?: Given<string>;
    /** sun: Sun on bonnet and roof. */
    sun?: Given<string>;
    /** road speed: Speed held throughout. */
    speed?: Given<string>;
    /** speed trace: Speed against time, in place of one speed. */
    speed_trace?: CurveGiven;
    /** recorded trace: A recorded speed trace beside the build: CSV with a column time (s, sec, seconds, ms, min; without a unit s) and a column speed (mph, mi/h, kmh, km/h, kph, kmph, m/s), the unit after an underscore or in brackets, as in time_s or Speed (km/h). Other columns are passed over; cells are parted by commas, semicolons or tabs. */
    trace_file?: Given<string>;
    /** grade: Rise over level run. */
    grade?: Given<number | string>;
    /** payload: People and luggage beyond the driver. */
    payload?: Given<string>;
    /** air conditioning asked for: Whether the driver has it on (where it is fitted). */
    air_conditioning?: Given<boolean>;
    /** conditions: What else is on: night, rain, heat, brake, start. */
    conditions?: Given<string[]>;
    /** start: From ambient temperature all through, or warmed through. */
    start?: Given<"cold" | "warm">;
    /** after: The duty whose end this one starts from. */
    after?: Given<string>;
    /** battery charge at the start: State of charge, as a share. */
    charge?: Given<number | string>;
    /** lateral acceleration: Acceleration to the side, held throughout; it is looked at to both sides. */
    lateral?: Given<string>;
    /** fuel in the tank: How full the tank is at the start, as a share. */
    fuel_level?: Given<number | string>;
    note?: string;
  }>;
  note?: string;
}
