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
    /** wheelbase: Front to rear axle. */
    wheelbase?: Given<string>;
    /** front's share: Share of the weight as driven that stands on the front axle. */
    front_share?: Given<number | string>;
    /** height of the centre of mass: Centre of mass over the road, as driven: weigh the front axle level and with the rear lifted. */
    centre_height?: Given<string>;
    /** weight laden: Weight with all it is meant to carry; without it only the car as driven is looked at. */
    laden_weight?: Given<string>;
    /** front's share laden: Share of the laden weight that stands on the front axle. */
    laden_front_share?: Given<number | string>;
    /** its height laden: Centre of mass over the road, laden; that as driven where it is not given. */
    laden_centre_height?: Given<string>;
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
    /** motoring mean pressure: Mean pressure that drags the engine round on the overrun, throttle closed, over the whole displacement. */
    motoring_pressure?: Given<string>;
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
    /** crank turns: Seen from the front of the engine, where the pulleys are. */
    crank_turns?: Given<"clockwise" | "anticlockwise">;
    /** belts: Belts, by any names. */
    belt?: Record<string, {
      /** section: V-belt or ribbed belt: how far its pulleys may be out of line and how small they may be. */
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
      /** ribs: Of a ribbed belt: how many ribs. */
      ribs?: Given<number | string>;
      /** mass per length: Of one belt. */
      mass?: Given<string>;
      /** length: The belt's own, as it is sold. */
      length?: Given<string>;
      /** measured path: Length round the pulleys by a string, adjuster where it is meant to stand; not needed where every pulley's place is given. */
      path?: Given<string>;
      /** cords above the length's line: How far the cords lie outside the line on which the length is told; without it 2 mm for a ribbed belt and none for a V-belt. */
      line_difference?: Given<string>;
      /** smallest pulley: Smallest diameter, on the cords, its maker allows; without it the standard's for a ribbed belt. */
      least_diameter?: Given<string>;
      /** adjuster: What tightens it. */
      adjuster?: {
        /** moves: The pulley it moves, by its name on this belt. */
        pulley?: Given<string>;
        /** kind: A slide (a straight slot), a pivot (swung and bolted), or an arm with a spring. */
        kind?: Given<"slide" | "pivot" | "arm">;
        /** slides towards: Of a slide: the way that tightens, turned up from the right, seen from the front. */
        direction?: Given<string>;
        /** pivot across: Of a pivot or arm: its pivot to the right of the crank's centre. */
        pivot_x?: Given<string>;
        /** pivot above: Its pivot above the crank's centre. */
        pivot_y?: Given<string>;
        /** arm: Pivot to pulley centre, where the pivot's place is not given. */
        arm?: Given<string>;
        /** lets on by: Of a slide or pivot: travel of the pulley's centre from where it stands to its loose end. */
        loosen?: Given<string>;
        /** takes up by: Travel of the pulley's centre from where it stands to its tight end. */
        tighten?: Given<string>;
        /** window: Of an arm: angle between its marks; the pulley's place is meant at mid window. */
        window?: Given<string>;
        /** take-up: Belt taken up for the pulley centre's travel, where the geometry does not tell it: 2 where the belt goes half round it. */
        take_up?: Given<number | string>;
        note?: string;
      };
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
        /** order: Where the belt meets it after the crank, either way round; without it, in the order of the file. */
        order?: Given<number | string>;
        /** on the shaft of: The pulley of this belt that turns it, by its name, where two things sit on one shaft (a fan on the pump's): it then needs no place of its own. */
        shaft_of?: Given<string>;
        /** across: Its centre to the right of the crank's, seen from the front of the engine. */
        x?: Given<string>;
        /** above: Its centre above the crank's. */
        y?: Given<string>;
        /** forward of the crank's plane: How far its groove's middle, or the middle of its ribs, stands forward of the crank pulley's, without the shims told here; below 0 behind it. By a straight-edge or laser off the crank pulley's face. */
        depth?: Given<string>;
        /** has to turn: The way the accessory is made to turn, where it minds. */
        rotation?: Given<"with crank" | "against crank">;
        /** highest speed: What its maker allows the accessory. */
        highest_speed?: Given<string>;
        /** greatest torque: The most it asks for; of a steering pump, at full lock. What other systems work out (alternator, compressor, coolant pump, fan) is taken from them. */
        torque?: Given<string>;
        /** shims under the bracket: Thickness of the shims that move it forward. */
        shim?: Given<string>;
        /** room for shims: The thickest stack its bracket has room for; without it the bracket is not to be moved. */
        shim_room?: Given<string>;
        /** bracket bolt: Thread diameter of the bolts that go through the shims. */
        bolt?: Given<string>;
        /** thread engaged: Length of thread the bolts have without any shims. */
        engagement?: Given<string>;
        /** thread in: What the bolts are screwed into: in aluminium they need more thread. */
        thread?: Given<"iron" | "aluminium">;
        note?: string;
      }>;
      note?: string;
    }>;
    /** shims on hand: Thicknesses to choose from, by any names. */
    shim?: Record<string, {
      /** thickness: Of one shim. */
      thickness?: Given<string>;
      /** on hand: How many there are. */
      count?: Given<number | string>;
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
    /** delivery: Injection under pressure, or a carburettor. */
    delivery?: Given<"injection" | "carburettor">;
    /** tank: Shape, vent and safety of the tank. */
    tank?: {
      /** tank: What the tank holds when full. */
      volume?: Given<string>;
      /** width: Inside width, across the car; the tank is reckoned as a box. */
      width?: Given<string>;
      /** length: Inside length, along the car. */
      length?: Given<string>;
      /** strapping curve: Fuel against depth, measured by filling; without it a box of that width, length and volume. */
      strapping?: CurveGiven;
      /** vent: How air gets in as fuel goes out: an open line (to the air or a canister), a two-way cap, or not at all. */
      vent?: Given<"none" | "open line" | "two-way cap">;
      /** vapour made up: Share of a tank's falling pressure that fuel vapour makes good where no air comes in. */
      vapour_share?: Given<number | string>;
      /** bonded: Whether tank and filler neck are joined to the body by a strap, so that no spark jumps in filling. */
      bonded?: Given<boolean>;
      /** roll-over valve: Whether the vent has a valve that shuts when the car lies on its roof. */
      rollover_valve?: Given<boolean>;
      /** above the air at the start: How far the tank's fuel lies above the air when a warm car sets off. */
      start_rise?: Given<string>;
      /** heat from exhaust and road: What exhaust and hot road give to the tank while driving. */
      road_heat?: Given<string>;
      note?: string;
    };
    /** pick-up: Where the fuel is drawn, and what keeps it covered. */
    pick_up?: {
      /** from the side: From the pick-up to the nearer side wall of the tank, inside. */
      from_side?: Given<string>;
      /** from the front: From the pick-up to the front wall of the tank, inside; without it braking is not looked at. */
      from_front?: Given<string>;
      /** above the floor: Depth of fuel there at which it begins to draw air. */
      height?: Given<string>;
      /** baffled cell, width: Width of the baffled cell it stands in, the pick-up in its middle; without it there is no baffle. */
      cell_width?: Given<string>;
      /** baffled cell, length: Length of that cell along the car. */
      cell_length?: Given<string>;
      /** tray or surge pot: Fuel a tray or surge pot keeps at the pump when the tank's runs away from it. */
      reserve?: Given<string>;
      /** return leads into it: Whether what the regulator sends back runs into the tray or pot: then the engine alone empties it. */
      fed_by_return?: Given<boolean>;
      note?: string;
    };
    /** pump: The pump, by its curve. */
    pump?: {
      /** place: In the tank, or outside. */
      place?: Given<"in tank" | "outside">;
      /** drive: Electric, or by the engine's cam. */
      drive?: Given<"electric" | "engine">;
      /** inlet above the tank's floor: Height of the pump's inlet over the tank's floor; below it a minus. */
      height?: Given<string>;
      /** curve: Flow against pressure at its rated volts. */
      curve?: CurveGiven;
      /** flow: Flow at the pressure below, at its rated volts; instead of a curve. */
      flow?: Given<string>;
      /** at pressure: Pressure the flow is meant at. */
      at_pressure?: Given<string>;
      /** free flow over rated flow: Flow against no pressure over the rated one; tells the curve where only one point is known. */
      free_flow_ratio?: Given<number | string>;
      /** at volts: Volts of its curve; without it 13.5 V in a 12 V car, 6.75 V in a 6 V car. */
      at_voltage?: Given<string>;
      /** current: Current it takes at work: all its power ends as heat in the fuel. */
      current?: Given<string>;
      /** relief valve opens: Pressure at which the pump's own relief valve opens; of a cam-driven pump its spring's pressure. */
      relief?: Given<string>;
      /** margin to vapour it needs: Least pressure at its inlet over the fuel's vapour pressure. */
      needed_margin?: Given<string>;
      /** check valve: Whether pressure stays in the lines when it stops. */
      check_valve?: Given<boolean>;
      /** inlet: What its inlet seals on; not asked in the tank. */
      inlet?: Given<"hose" | "bead" | "barb" | "37 deg" | "45 deg" | "quick connect" | "o-ring" | "pipe thread" | "banjo" | "compression">;
      /** outlet: What the outlet seals on; of a pump in the tank that of the tank's cover. */
      outlet?: Given<"hose" | "bead" | "barb" | "37 deg" | "45 deg" | "quick connect" | "o-ring" | "pipe thread" | "banjo" | "compression">;
      note?: string;
    };
    /** filters: Strainers and filters. */
    filter?: Record<string, {
      /** place: Before the pump (a strainer in the tank too), or in the feed. */
      place?: Given<"before pump" | "feed">;
      /** fineness: Size of the particles it keeps. */
      micron?: Given<string>;
      /** drop: Pressure it loses at the flow below; its medium is laminar, so the loss goes with the flow. */
      drop?: Given<string>;
      /** at flow: Flow the drop is meant at. */
      at_flow?: Given<string>;
      note?: string;
    }>;
    /** suction lines: Runs from the tank to a pump outside it, in the order of the flow. */
    suction?: Record<string, {
      /** kind: Tube or hose. */
      kind?: Given<"tube" | "hose">;
      /** bore: Inside diameter. */
      bore?: Given<string>;
      /** length: Length along its middle. */
      length?: Given<string>;
      /** losses: Sum of the loss coefficients of its bends, fittings and valves. */
      losses?: Given<number | string>;
      /** first end: What the end nearer its source seals on. */
      start?: Given<"hose" | "bead" | "barb" | "37 deg" | "45 deg" | "quick connect" | "o-ring" | "pipe thread" | "banjo" | "compression">;
      /** last end: What its other end seals on. */
      end?: Given<"hose" | "bead" | "barb" | "37 deg" | "45 deg" | "quick connect" | "o-ring" | "pipe thread" | "banjo" | "compression">;
      /** rated pressure: Working pressure printed on a hose. */
      rating?: Given<string>;
      /** age: Years since the date printed on a hose. */
      age?: Given<string>;
      /** zone: Where most of it lies. */
      zone?: Given<"under car" | "engine bay">;
      /** distance to the exhaust: Least distance to any part of the exhaust. */
      exhaust_distance?: Given<string>;
      /** length beside the exhaust: Length of it that runs beside the exhaust at about that distance. */
      beside_exhaust?: Given<string>;
      /** share that faces the exhaust: Share of that length's surroundings taken up by the exhaust; without it by distance beside a 50 mm pipe. */
      view?: Given<number | string>;
      /** shielded: Whether a shield or heat sleeve stands between it and the exhaust. */
      shielded?: Given<boolean>;
      /** before the regulator: Of a feed whose regulator stands at a filter: whether this run comes before it. */
      before_regulator?: Given<boolean>;
      note?: string;
    }>;
    /** feed lines: Runs from the pump to rail or carburettor, in the order of the flow. */
    feed?: Record<string, {
      /** kind: Tube or hose. */
      kind?: Given<"tube" | "hose">;
      /** bore: Inside diameter. */
      bore?: Given<string>;
      /** length: Length along its middle. */
      length?: Given<string>;
      /** losses: Sum of the loss coefficients of its bends, fittings and valves. */
      losses?: Given<number | string>;
      /** first end: What the end nearer its source seals on. */
      start?: Given<"hose" | "bead" | "barb" | "37 deg" | "45 deg" | "quick connect" | "o-ring" | "pipe thread" | "banjo" | "compression">;
      /** last end: What its other end seals on. */
      end?: Given<"hose" | "bead" | "barb" | "37 deg" | "45 deg" | "quick connect" | "o-ring" | "pipe thread" | "banjo" | "compression">;
      /** rated pressure: Working pressure printed on a hose. */
      rating?: Given<string>;
      /** age: Years since the date printed on a hose. */
      age?: Given<string>;
      /** zone: Where most of it lies. */
      zone?: Given<"under car" | "engine bay">;
      /** distance to the exhaust: Least distance to any part of the exhaust. */
      exhaust_distance?: Given<string>;
      /** length beside the exhaust: Length of it that runs beside the exhaust at about that distance. */
      beside_exhaust?: Given<string>;
      /** share that faces the exhaust: Share of that length's surroundings taken up by the exhaust; without it by distance beside a 50 mm pipe. */
      view?: Given<number | string>;
      /** shielded: Whether a shield or heat sleeve stands between it and the exhaust. */
      shielded?: Given<boolean>;
      /** before the regulator: Of a feed whose regulator stands at a filter: whether this run comes before it. */
      before_regulator?: Given<boolean>;
      note?: string;
    }>;
    /** return lines: Runs from the regulator to the tank, in the order of the flow. */
    return?: Record<string, {
      /** kind: Tube or hose. */
      kind?: Given<"tube" | "hose">;
      /** bore: Inside diameter. */
      bore?: Given<string>;
      /** length: Length along its middle. */
      length?: Given<string>;
      /** losses: Sum of the loss coefficients of its bends, fittings and valves. */
      losses?: Given<number | string>;
      /** first end: What the end nearer its source seals on. */
      start?: Given<"hose" | "bead" | "barb" | "37 deg" | "45 deg" | "quick connect" | "o-ring" | "pipe thread" | "banjo" | "compression">;
      /** last end: What its other end seals on. */
      end?: Given<"hose" | "bead" | "barb" | "37 deg" | "45 deg" | "quick connect" | "o-ring" | "pipe thread" | "banjo" | "compression">;
      /** rated pressure: Working pressure printed on a hose. */
      rating?: Given<string>;
      /** age: Years since the date printed on a hose. */
      age?: Given<string>;
      /** zone: Where most of it lies. */
      zone?: Given<"under car" | "engine bay">;
      /** distance to the exhaust: Least distance to any part of the exhaust. */
      exhaust_distance?: Given<string>;
      /** length beside the exhaust: Length of it that runs beside the exhaust at about that distance. */
      beside_exhaust?: Given<string>;
      /** share that faces the exhaust: Share of that length's surroundings taken up by the exhaust; without it by distance beside a 50 mm pipe. */
      view?: Given<number | string>;
      /** shielded: Whether a shield or heat sleeve stands between it and the exhaust. */
      shielded?: Given<boolean>;
      /** before the regulator: Of a feed whose regulator stands at a filter: whether this run comes before it. */
      before_regulator?: Given<boolean>;
      note?: string;
    }>;
    /** regulator: What holds the pressure. */
    regulator?: {
      /** place: At the rail with a return, at a filter or at the pump with the rail behind it, in line before a carburettor, or none. */
      place?: Given<"rail" | "filter" | "pump" | "in line" | "none">;
      /** set pressure: Pressure it holds. */
      pressure?: Given<string>;
      /** its own least drop: Pressure it loses fully open at the flow below. */
      least_drop?: Given<string>;
      /** at flow: Flow that drop is meant at. */
      at_flow?: Given<string>;
      /** rise from least to full flow: How far its pressure moves from shut to open; the set pressure lies in the middle. */
      rise?: Given<string>;
      /** vacuum reference: Whether a hose to the manifold lets its pressure follow the vacuum. */
      vacuum_referenced?: Given<boolean>;
      /** inlet: What its inlet seals on, where a run ends there. */
      inlet?: Given<"hose" | "bead" | "barb" | "37 deg" | "45 deg" | "quick connect" | "o-ring" | "pipe thread" | "banjo" | "compression">;
      /** outlet: What its outlet seals on. */
      outlet?: Given<"hose" | "bead" | "barb" | "37 deg" | "45 deg" | "quick connect" | "o-ring" | "pipe thread" | "banjo" | "compression">;
      note?: string;
    };
    /** rail: The injectors' rail, or a carburettor's float bowl. */
    rail?: {
      /** heat from the engine bay: Heat the rail or float bowl takes up for each degree the bay's air is hotter. */
      conductance?: Given<string>;
      /** heat capacity: Of rail or bowl and the fuel in it. */
      heat_capacity?: Given<string>;
      /** inlet: What the rail's or carburettor's inlet seals on. */
      inlet?: Given<"hose" | "bead" | "barb" | "37 deg" | "45 deg" | "quick connect" | "o-ring" | "pipe thread" | "banjo" | "compression">;
      /** outlet: What the rail's outlet seals on, where the fuel returns from it. */
      outlet?: Given<"hose" | "bead" | "barb" | "37 deg" | "45 deg" | "quick connect" | "o-ring" | "pipe thread" | "banjo" | "compression">;
      note?: string;
    };
    /** injectors: The injectors by their rating. */
    injectors?: {
      /** injectors: How many there are. */
      count?: Given<number | string>;
      /** flow of each: Held open at the pressure below. */
      flow?: Given<string>;
      /** at pressure: Pressure the flow is meant at. */
      at_pressure?: Given<string>;
      note?: string;
    };
    /** calibration: What the engine's controller was told. */
    calibration?: {
      /** pressure it was told: Pressure across the injectors that stands in the engine's controller. */
      pressure?: Given<string>;
      /** injector flow it was told: Flow of an injector that stands in the controller, at that pressure; without it the injectors' own. */
      injector_flow?: Given<string>;
      /** expects a vacuum reference: Whether it reckons with a pressure that follows the manifold's vacuum. */
      vacuum_referenced?: Given<boolean>;
      /** trim it has: Share by which it can correct its fuel either way. */
      trim?: Given<number | string>;
      note?: string;
    };
    /** carburettor: What a carburettor's needle asks for. */
    carburettor?: {
      /** least pressure: Least pressure at the needle that fills the bowl. */
      least?: Given<string>;
      /** greatest pressure: Greatest pressure the float can shut the needle against. */
      most?: Given<string>;
      note?: string;
    };
    /** cut-off: What stops an electric pump. */
    cut_off?: {
      /** when the engine stops: Whether an electric pump stops within seconds of the engine stopping, key on or not. */
      engine_stopped?: Given<boolean>;
      /** when the car is hit: Whether a switch stops it when the car is hit. */
      impact?: Given<boolean>;
      note?: string;
    };
    /** ethanol: Share of ethanol by volume. */
    ethanol?: Given<number | string>;
    /** Reid vapour pressure: Of the gasoline before ethanol is blended in; summer fuel. */
    reid_pressure?: Given<string>;
    /** vapour pressure over the law's: True vapour pressure over that of the law; carries its doubt. */
    usual_vapour?: Given<number | string>;
    /** exhaust's surface: Temperature of the exhaust beside the lines, engine running hot. */
    exhaust_surface?: Given<string>;
    /** range wanted: Distance at cruise on a tank that is wanted. */
    range_wanted?: Given<string>;
    note?: string;
  };
  /** vacuum and breathing */
  vacuum?: {
    /** idle vacuum: Manifold vacuum at a hot idle, in gear where the gearbox is automatic, as near the sea's level reads. */
    idle?: Given<string>;
    /** idle vacuum with air conditioning: The same with the compressor on; where it is not given it follows from the drop of the idle speed. */
    idle_air_conditioning?: Given<string>;
    /** usual idle vacuum: Stands in for an idle vacuum nobody measured, less what a long camshaft costs. Never for a booster's: brakes ask for the gauge. */
    usual_idle?: Given<string>;
    /** camshaft duration: At 0.050 in of lift, mean of inlet and exhaust; lowers the usual idle vacuum. */
    cam_duration?: Given<string>;
    /** booster's store: What holds vacuum for the booster. */
    store?: {
      /** booster volume: Air in all the booster's chambers at rest and in its hose up to the check valve. */
      booster_volume?: Given<string>;
      /** rear chambers applied: Volume behind the diaphragms with the brakes hard on: area times stroke, and what is there at rest. */
      rear_volume?: Given<string>;
      /** reservoir: A tank of its own between check valve and booster. */
      reservoir?: Given<string>;
      /** time to fill: Time in which the store comes two thirds of the way to the manifold's vacuum. */
      fill_time?: Given<string>;
      /** vacuum lost in a minute: What the gauge at the booster falls in the first minute, engine off. */
      leak?: Given<string>;
      note?: string;
    };
    /** vacuum pump: An electric pump at the booster; leave it out where there is none. */
    pump?: {
      /** starts below: Vacuum below which its switch starts it. */
      cut_in?: Given<string>;
      /** stops at: Vacuum at which its switch stops it. */
      cut_out?: Given<string>;
      /** time to stop: Time from no vacuum to where it stops, with this store. */
      fill_time?: Given<string>;
      /** current: While it runs; lay its wire as a load of its own under `wiring.load`. */
      current?: Given<string>;
      note?: string;
    };
    /** crankcase breathing: Crankcase valve and the air of idling. */
    breathing?: {
      /** crankcase valve's flow: What the crankcase ventilation valve lets through, against manifold vacuum. */
      valve_flow?: CurveGiven;
      /** blow-by: Gas past the rings at a hot idle. */
      blow_by?: Given<string>;
      /** air for idling: Air the engine asks for at its hot idle speed. */
      idle_air?: Given<string>;
      /** air past the closed throttle: By its stop and leaks: air the idle controller cannot shut off. */
      throttle_leak?: Given<string>;
      note?: string;
    };
    note?: string;
  };
  /** brakes */
  brakes?: {
    /** circuits: One circuit for all wheels, one an axle, or one for each diagonal. */
    split?: Given<"single" | "front and rear" | "diagonal">;
    /** pedal: The pedal and its rod. */
    pedal?: {
      /** pedal ratio: Foot travel over push-rod travel. */
      ratio?: Given<number | string>;
      /** pedal travel: Travel of the pad from rest to the floor, carpet in place. */
      travel?: Given<string>;
      /** input rod: Pedal's pin to the ball in booster or master cylinder. */
      rod_length?: Given<string>;
      /** rod's offset: Pedal's pin off the centre line of booster or master cylinder, at its worst. */
      rod_offset?: Given<string>;
      note?: string;
    };
    /** booster: Vacuum booster. */
    booster?: {
      /** booster fitted: Whether a vacuum booster stands behind the master. */
      fitted?: Given<boolean>;
      /** diaphragm area: Effective area of all diaphragms together; else `diameter` and `diaphragms`. */
      area?: Given<string>;
      /** effective diameter: Effective diameter of one diaphragm: some 8 % less than the shell's. */
      diameter?: Given<string>;
      /** diaphragms: One or two, one behind the other. */
      diaphragms?: Given<number | string>;
      /** gain: Output over push-rod force before run-out. */
      gain?: Given<number | string>;
      /** return spring: Force of its return spring as it works. */
      spring?: Given<string>;
      /** efficiency: Share of vacuum times area that reaches the rod. */
      efficiency?: Given<number | string>;
      /** rod gap: Output rod to the master's piston at rest; below 0 where the rod presses it. */
      rod_gap?: Given<string>;
      note?: string;
    };
    /** master cylinder: Master cylinder. */
    master?: {
      /** master bore: Bore of the master cylinder. */
      bore?: Given<string>;
      /** master stroke: Whole stroke of the push rod, both chambers. */
      stroke?: Given<string>;
      /** front's chamber: Stroke of the chamber that feeds the front, or of either where the split is diagonal; half of all where it is not given. */
      front_chamber?: Given<string>;
      /** take-up: Stroke before both ports are closed, the rod's gap among it. */
      take_up?: Given<string>;
      /** way to the port: How far the piston may be held off its stop before the compensating port stays covered. */
      port_travel?: Given<string>;
      /** rise of shut-in fluid: Rise at which fluid shut in by a covered port is looked at. */
      hot_rise?: Given<string>;
      note?: string;
    };
    /** valves: Valves in the lines, those in one line in the order the fluid meets them. */
    valve?: Record<string, {
      /** acts: Reduces above its knee (proportioning), or holds off below it (metering). */
      acts?: Given<"reduces" | "holds off">;
      /** in the front's line: Whether it stands in the front's line instead of the rear's. */
      front?: Given<boolean>;
      /** knee: Line pressure at which it begins to act; of a metering valve that at which it opens. */
      knee?: Given<string>;
      /** slope: Outlet's rise over the inlet's above the knee; 1 where it does not reduce. */
      slope?: Given<number | string>;
      /** full pressure: Of a metering valve: line pressure from which it lets all through. */
      full?: Given<string>;
      /** knee laden: Of a valve that feels the load: its knee with the laden car. */
      laden_knee?: Given<string>;
      note?: string;
    }>;
    /** front brakes: Both front brakes. */
    front?: {
      /** make: Disc or drum. */
      make?: Given<"disc" | "drum">;
      /** piston diameter: Bore of a caliper or wheel cylinder. */
      piston?: Given<string>;
      /** pistons on one side: Pistons on one side of one caliper; of a drum those on one shoe. */
      pistons?: Given<number | string>;
      /** opposed pistons: Whether a fixed caliper has as many pistons on its other side; a sliding one has not. */
      opposed?: Given<boolean>;
      /** friction: Pad or lining on its metal, warm. */
      friction?: Given<number | string>;
      /** working radius: Disc: wheel's centre to the middle of the pad. Drum: half its inside diameter. */
      radius?: Given<string>;
      /** shoes: How the shoes of a drum stand to its turning. */
      shoes?: Given<"leading and trailing" | "two leading" | "duo-servo">;
      /** brake factor: Drag of all shoes of a drum over one piston's force; where it is not given it comes of friction and `shape`. */
      factor?: Given<number | string>;
      /** shape of the shoes: Figures for a brake factor that nobody states. */
      shape?: {
        /** pivot to centre: Shoe's pivot, or its far end where it floats, to the drum's centre. */
        pivot?: Given<string>;
        /** lever: Pivot to the line in which the cylinder pushes. */
        lever?: Given<string>;
        /** lining begins: From the line through pivot and centre to the near end of the lining. */
        start?: Given<string>;
        /** lining ends: From the same line to its far end. */
        end?: Given<string>;
        note?: string;
      };
      /** pressure at touch: Line pressure that the return springs of the shoes eat. */
      touch_pressure?: Given<string>;
      /** clearance: Free way of each piston before pad or shoe touches: roll-back, knock-back, run-out. */
      clearance?: Given<string>;
      /** give at 900 psi: Way of each piston at 900 psi beyond touch: pad or lining, caliper or drum. */
      give?: Given<string>;
      /** give of the lines at 900 psi: What hoses, tubes and the fluid itself of this axle take up at 900 psi. */
      line_give?: Given<string>;
      /** fluid: Fluid in this axle's cylinders and lines. */
      fluid?: Given<string>;
      /** greatest retreat: How far a seal lets a caliper's piston creep back when the fluid pulls. */
      retreat?: Given<string>;
      /** wear of a pair: What both pads of a caliper lose from new to worn out. */
      wear?: Given<string>;
      /** reservoir: Fluid that the reservoir holds for this axle. */
      reservoir?: Given<string>;
      /** reservoir over the brakes: Fluid level over this axle's highest piston; below 0 where it stands lower. */
      reservoir_above?: Given<string>;
      /** residual valve: Pressure a residual valve of this axle keeps, wherever it sits; 0 where there is none. */
      residual?: Given<string>;
      /** cups: Whether the wheel cylinders' cups are plain, or held to the bore by expanders. */
      cups?: Given<"plain" | "held by expanders">;
      /** slack of the hoses: What is left of this axle's hoses, stretched least well: at droop, at lock, at bump. */
      hose_slack?: Given<string>;
      /** heat: What its rotors or drums take up and shed. */
      heat?: {
        /** mass: Of one rotor's friction ring, or of one drum: what takes up the heat. Worn ones weigh less. */
        mass?: Given<string>;
        /** specific heat: Of its metal. */
        specific_heat?: Given<string>;
        /** cooling at rest: Heat one rotor or drum gives to still air and hub for each kelvin, radiation apart. */
        standing?: Given<string>;
        /** cooling by travel: What travel adds to it at 80 km/h; it grows with the 0.8th power of speed. */
        moving?: Given<string>;
        /** surface that shines: Outer surface of one, for the heat it radiates. */
        surface?: Given<string>;
        /** highest temperature: What pads or linings and metal stand again and again; where it is not given 450 degC for a disc, 320 degC for a drum. */
        highest?: Given<string>;
        /** fluid's share of the rise: How far the fluid in the cylinder follows the metal's rise over the air, as a share, once warmed. */
        fluid_share?: Given<number | string>;
        /** friction hot over cold: Friction against the metal's temperature over that of a cold stop; a usual organic lining's where it is not given. */
        fade?: CurveGiven;
        note?: string;
      };
      note?: string;
    };
    /** rear brakes: Both rear brakes. */
    rear?: {
      /** make: Disc or drum. */
      make?: Given<"disc" | "drum">;
      /** piston diameter: Bore of a caliper or wheel cylinder. */
      piston?: Given<string>;
      /** pistons on one side: Pistons on one side of one caliper; of a drum those on one shoe. */
      pistons?: Given<number | string>;
      /** opposed pistons: Whether a fixed caliper has as many pistons on its other side; a sliding one has not. */
      opposed?: Given<boolean>;
      /** friction: Pad or lining on its metal, warm. */
      friction?: Given<number | string>;
      /** working radius: Disc: wheel's centre to the middle of the pad. Drum: half its inside diameter. */
      radius?: Given<string>;
      /** shoes: How the shoes of a drum stand to its turning. */
      shoes?: Given<"leading and trailing" | "two leading" | "duo-servo">;
      /** brake factor: Drag of all shoes of a drum over one piston's force; where it is not given it comes of friction and `shape`. */
      factor?: Given<number | string>;
      /** shape of the shoes: Figures for a brake factor that nobody states. */
      shape?: {
        /** pivot to centre: Shoe's pivot, or its far end where it floats, to the drum's centre. */
        pivot?: Given<string>;
        /** lever: Pivot to the line in which the cylinder pushes. */
        lever?: Given<string>;
        /** lining begins: From the line through pivot and centre to the near end of the lining. */
        start?: Given<string>;
        /** lining ends: From the same line to its far end. */
        end?: Given<string>;
        note?: string;
      };
      /** pressure at touch: Line pressure that the return springs of the shoes eat. */
      touch_pressure?: Given<string>;
      /** clearance: Free way of each piston before pad or shoe touches: roll-back, knock-back, run-out. */
      clearance?: Given<string>;
      /** give at 900 psi: Way of each piston at 900 psi beyond touch: pad or lining, caliper or drum. */
      give?: Given<string>;
      /** give of the lines at 900 psi: What hoses, tubes and the fluid itself of this axle take up at 900 psi. */
      line_give?: Given<string>;
      /** fluid: Fluid in this axle's cylinders and lines. */
      fluid?: Given<string>;
      /** greatest retreat: How far a seal lets a caliper's piston creep back when the fluid pulls. */
      retreat?: Given<string>;
      /** wear of a pair: What both pads of a caliper lose from new to worn out. */
      wear?: Given<string>;
      /** reservoir: Fluid that the reservoir holds for this axle. */
      reservoir?: Given<string>;
      /** reservoir over the brakes: Fluid level over this axle's highest piston; below 0 where it stands lower. */
      reservoir_above?: Given<string>;
      /** residual valve: Pressure a residual valve of this axle keeps, wherever it sits; 0 where there is none. */
      residual?: Given<string>;
      /** cups: Whether the wheel cylinders' cups are plain, or held to the bore by expanders. */
      cups?: Given<"plain" | "held by expanders">;
      /** slack of the hoses: What is left of this axle's hoses, stretched least well: at droop, at lock, at bump. */
      hose_slack?: Given<string>;
      /** heat: What its rotors or drums take up and shed. */
      heat?: {
        /** mass: Of one rotor's friction ring, or of one drum: what takes up the heat. Worn ones weigh less. */
        mass?: Given<string>;
        /** specific heat: Of its metal. */
        specific_heat?: Given<string>;
        /** cooling at rest: Heat one rotor or drum gives to still air and hub for each kelvin, radiation apart. */
        standing?: Given<string>;
        /** cooling by travel: What travel adds to it at 80 km/h; it grows with the 0.8th power of speed. */
        moving?: Given<string>;
        /** surface that shines: Outer surface of one, for the heat it radiates. */
        surface?: Given<string>;
        /** highest temperature: What pads or linings and metal stand again and again; where it is not given 450 degC for a disc, 320 degC for a drum. */
        highest?: Given<string>;
        /** fluid's share of the rise: How far the fluid in the cylinder follows the metal's rise over the air, as a share, once warmed. */
        fluid_share?: Given<number | string>;
        /** friction hot over cold: Friction against the metal's temperature over that of a cold stop; a usual organic lining's where it is not given. */
        fade?: CurveGiven;
        note?: string;
      };
      note?: string;
    };
    /** brake lamps' switch: What switches the brake lamps. */
    lamp?: {
      /** worked by: What closes the brake lamps' switch. */
      by?: Given<"pedal travel" | "load in the push rod" | "line pressure">;
      /** pedal travel to close: Travel of the pad at which it closes. */
      travel?: Given<string>;
      /** pedal force to close: Force on the pad at which a switch in the push rod's eye closes. */
      force?: Given<string>;
      /** pressure to close: Line pressure at which a hydraulic switch closes. */
      pressure?: Given<string>;
      note?: string;
    };
    /** parking brake: Parking brake, on the rear wheels. */
    parking?: {
      /** worked by: Hand or foot. */
      by?: Given<"hand" | "foot">;
      /** leverage: Force on the shoes or pads of both rear wheels together over that of hand or foot, cables' friction off. */
      leverage?: Given<number | string>;
      /** brake factor: Drag over that force: of a disc twice its friction, of a drum less than its factor when driven by a cylinder. */
      factor?: Given<number | string>;
      /** working radius: Where it is not the rear brake's own. */
      radius?: Given<string>;
      note?: string;
    };
    /** fluid: What the system is filled with. */
    fill?: {
      /** grade: Fluid it is filled with. */
      grade?: Given<"DOT 3" | "DOT 4" | "DOT 5" | "DOT 5.1">;
      /** grade before: Fluid that stood in any part that is kept; the same as `grade` where all is new. */
      before?: Given<"DOT 3" | "DOT 4" | "DOT 5" | "DOT 5.1">;
      /** cleaned out: Whether every kept part was taken apart, washed with spirit and given new rubber. */
      cleaned?: Given<boolean>;
      /** water in the fluid: Share of water as tested at the bleeders, the worst of them; 0 only for fluid just out of a sealed can with every line flushed. */
      water?: Given<number | string>;
      note?: string;
    };
    /** pressure-difference warning: Whether a lamp tells when one circuit has no pressure or its reservoir is low. */
    difference_warning?: Given<boolean>;
    /** hoses' rating: Working pressure of the weakest hose; without one, a quarter of the burst pressure on its sheet. */
    hose_rating?: Given<string>;
    /** tubes' rating: Working pressure of the weakest tube and its ends; without one, a quarter of the burst pressure. */
    tube_rating?: Given<string>;
    /** adhesion, dry: Greatest braking force of the tyres on a dry road over the load they carry. */
    dry_adhesion?: Given<number | string>;
    /** adhesion, wet: The same on a wet road. */
    wet_adhesion?: Given<number | string>;
    note?: string;
  };
  /** wheels and tyres */
  wheels?: {
    /** front wheels: What the front wheels go over and pass by. */
    front?: {
      /** barrel inside: Inside radius of the wheel where the caliper sits, balance weights in it counted; the rim's nominal diameter does not tell it. */
      barrel_radius?: Given<string>;
      /** caliper outside: From the hub's centre to the outermost point of the caliper, bridge and bolts counted. */
      caliper_radius?: Given<string>;
      /** caliper to spokes: From the caliper's outer face to the back of the spokes, wheel on its hub; below nothing they meet. */
      spoke_gap?: Given<string>;
      /** tyre to lip before: Least gap of tyre to fender lip at full bump, before any of the changes below. */
      lip_gap?: Given<string>;
      /** the same at full lock: Least gap of tyre to anything at full lock and half bump, before the changes. */
      lock_gap?: Given<string>;
      /** hub moved out: How far a rotor's hat, a spacer or another hub moves the wheel's face out on one side. */
      hub_outward?: Given<string>;
      /** lip come nearer: How much nearer tyre and lip come because the car stands lower. */
      lip_inward?: Given<string>;
      /** wheel farther out: How much farther out the new wheel and tyre reach: less back spacing, more width. */
      wheel_outward?: Given<string>;
      note?: string;
    };
    /** rear wheels: The same behind. */
    rear?: {
      /** barrel inside: Inside radius of the wheel where the caliper sits, balance weights in it counted; the rim's nominal diameter does not tell it. */
      barrel_radius?: Given<string>;
      /** caliper outside: From the hub's centre to the outermost point of the caliper, bridge and bolts counted. */
      caliper_radius?: Given<string>;
      /** caliper to spokes: From the caliper's outer face to the back of the spokes, wheel on its hub; below nothing they meet. */
      spoke_gap?: Given<string>;
      /** tyre to lip before: Least gap of tyre to fender lip at full bump, before any of the changes below. */
      lip_gap?: Given<string>;
      /** the same at full lock: Least gap of tyre to anything at full lock and half bump, before the changes. */
      lock_gap?: Given<string>;
      /** hub moved out: How far a rotor's hat, a spacer or another hub moves the wheel's face out on one side. */
      hub_outward?: Given<string>;
      /** lip come nearer: How much nearer tyre and lip come because the car stands lower. */
      lip_inward?: Given<string>;
      /** wheel farther out: How much farther out the new wheel and tyre reach: less back spacing, more width. */
      wheel_outward?: Given<string>;
      note?: string;
    };
    /** tyres: The tyres, alike on all wheels. */
    tyre?: {
      /** size: As it stands on the tyre: 205/70R14, 31x10.5R15. */
      size?: Given<string>;
      /** load each: Greatest load of one tyre, as it stands on it or by its load index. */
      load?: Given<string>;
      /** speed letter: The letter after the load index. */
      speed?: Given<"P" | "Q" | "R" | "S" | "T" | "U" | "H" | "V" | "W" | "Y">;
      /** age: By the week and year in its date code; that of the oldest, the spare too. */
      age?: Given<string>;
      note?: string;
    };
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
