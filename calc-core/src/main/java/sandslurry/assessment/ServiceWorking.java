package sandslurry.assessment;

import static sandslurry.assessment.Working.in;

import java.util.ArrayList;
import java.util.List;
import sandslurry.assessment.PulsationResult.Pulse;
import sandslurry.assessment.PulsationResult.Vessel;
import sandslurry.assessment.ServiceResult.Day;
import sandslurry.assessment.ServiceResult.GravityRun;
import sandslurry.assessment.ServiceResult.Screw;
import sandslurry.assessment.StateResult.Point;
import sandslurry.assessment.StateResult.PumpPoint;
import sandslurry.assessment.StateResult.SuctionPoint;
import sandslurry.assessment.StopResult.FlushFlow;
import sandslurry.assessment.StopResult.OverBed;
import sandslurry.assessment.StopResult.Plug;
import sandslurry.assessment.StopResult.StoppedRun;
import sandslurry.correlation.Physics;
import sandslurry.design.Design;
import sandslurry.design.PumpSpec.PistonSpec;
import sandslurry.design.RouteSpec.RunSpec;
import sandslurry.design.ServiceSpec.GravityRunSpec;
import sandslurry.design.ServiceSpec.ScrewSpec;
import sandslurry.material.Vehicle;
import sandslurry.material.Water;
import sandslurry.pipe.GassyLiquid;
import sandslurry.pipe.Joukowsky1898;
import sandslurry.pump.ScrewConveyor;
import sandslurry.pump.StandardAtmosphere;
import sandslurry.pump.WearIndex;
import sandslurry.separation.PartFullPipe.PartFullFlow;
import sandslurry.separation.SelfCleansing;
import sandslurry.transport.PackedPlug;
import sandslurry.transport.StoppedLine;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** The working behind a line in service. */
final class ServiceWorking {
  private static final String COMMON = "common practice, no source";
  private static final String DEFINITION = "definition";
  private static final String WILSON = "Wilson 1970, balance of forces on a bed";

  private ServiceWorking() {}

  static List<Step> steps(Design design, Materials materials, ServiceResult result) {
    List<Step> steps = new ArrayList<>();
    for (StateResult state : result.states()) {
      state.point().ifPresent(point -> steps.addAll(state(design, state, point)));
    }
    result.pulsation().ifPresent(p -> steps.addAll(pulsation(design, p)));
    result.surges().forEach(s -> steps.addAll(surge(design, s)));
    result.stop().ifPresent(s -> steps.addAll(stop(design, materials, s)));
    result.days().forEach(d -> steps.addAll(day(design, result, d)));
    result.screw().ifPresent(s -> steps.addAll(screw(design, s)));
    result.gravityRun().ifPresent(g -> steps.addAll(gravityRun(design, materials, g)));
    return steps;
  }

  private static List<Step> state(Design design, StateResult state, Point point) {
    Working w = new Working("state: " + state.name());
    double designFlow = Measure.FLOW.si(design.flow().orElseThrow().design());
    if (state.asked()) {
      w.step(
          "Q",
          point.driven() ? "flow at which pumps and line meet" : "flow, held at the design flow",
          point.driven() ? "H_pumps(Q) = H_line(Q)" : "Q = Q_design",
          Kind.FLOW,
          point.flowM3ps(),
          point.driven() ? "solved by Brent's method, or by the strokes of a piston pump" : "input",
          in("H", Kind.HEAD, point.headM()),
          in("rho_m", Kind.DENSITY, point.densityKgM3()),
          in("T", Kind.TEMPERATURE, point.temperatureK()));
      w.step(
          "V",
          "velocity in the largest bore of " + point.run() + ", the run that stands worst",
          "V = Q / A",
          Kind.VELOCITY,
          point.velocityMps(),
          DEFINITION,
          in("Q", Kind.FLOW, point.flowM3ps()),
          in("D", Kind.BORE, 2 * Math.sqrt(point.flowM3ps() / (Math.PI * point.velocityMps()))));
    }
    w.step(
        "W",
        "wear against the design flow, lower power",
        "W = (Q / Q_design)^" + WearIndex.LOW_POWER,
        Kind.NUMBER,
        Math.pow(point.flowM3ps() / designFlow, WearIndex.LOW_POWER),
        WearIndex.SOURCE,
        in("Q", Kind.FLOW, point.flowM3ps()),
        in("Q_design", Kind.FLOW, designFlow));
    w.step(
        "W",
        "the same, higher power",
        "W = (Q / Q_design)^" + WearIndex.HIGH_POWER,
        Kind.NUMBER,
        Math.pow(point.flowM3ps() / designFlow, WearIndex.HIGH_POWER),
        "as above");
    for (PumpPoint pump : point.pumps()) {
      pump(w, design, point, pump);
    }
    return w.steps();
  }

  private static void pump(Working w, Design design, Point point, PumpPoint pump) {
    if (pump.flowM3ps() > 0) {
      w.step(
          "P",
          "power at the shaft of " + pump.name(),
          "P = rho_m g Q H / eta",
          Kind.POWER,
          pump.shaftW(),
          DEFINITION,
          in("rho_m", Kind.DENSITY, point.densityKgM3()),
          in("Q", Kind.FLOW, pump.flowM3ps()),
          in("H", Kind.HEAD, Math.max(pump.headM(), 0)),
          in("eta", Kind.NUMBER, pump.efficiency()));
      pump.region()
          .ifPresent(
              region ->
                  w.step(
                      "b",
                      "flow of " + pump.name() + " over that at its best efficiency",
                      "b = Q / Q_best",
                      Kind.PERCENT,
                      pump.flowM3ps() / region.bestFlowM3ps(),
                      "regions of ANSI/HI 9.6.3 by the specific speed n_s; see the theory page",
                      in("n_s", Kind.NUMBER, pump.specificSpeed().getAsDouble()),
                      in("Q", Kind.FLOW, pump.flowM3ps()),
                      in("Q_best", Kind.FLOW, region.bestFlowM3ps())));
    }
    pump.suction().ifPresent(suction -> suction(w, design, point, pump, suction));
  }

  private static void suction(
      Working w, Design design, Point point, PumpPoint pump, SuctionPoint suction) {
    StandardAtmosphere atmosphere = new StandardAtmosphere();
    double altitude = Measure.LENGTH.si(design.service().suction().orElseThrow().altitude());
    double air =
        w.step(
            "p_air",
            "air pressure",
            atmosphere,
            Kind.PRESSURE,
            atmosphere.pressurePa(altitude).value(),
            in("h", Kind.LENGTH, altitude));
    w.step(
        "NPSHa",
        "NPSH available to " + pump.name(),
        "NPSHa = (p_air - p_v)/(rho_m g) + z - h_s - h_a",
        Kind.HEAD,
        suction.availableM(),
        DEFINITION,
        in("p_air", Kind.PRESSURE, air),
        in("p_v", Kind.PRESSURE, Water.vapourPressurePa(point.temperatureK())),
        in("rho_m", Kind.DENSITY, point.densityKgM3()),
        in("g", Kind.NUMBER, Physics.GRAVITY),
        in("z", Kind.HEAD, suction.floodM()),
        in("h_s", Kind.HEAD, suction.lossM()),
        in("h_a", Kind.HEAD, suction.accelerationM()));
    suction
        .inlet()
        .ifPresent(
            inlet ->
                w.step(
                    "S",
                    "suction specific speed of " + pump.name() + ", metric",
                    "S = n Q^0.5 / NPSHr^0.75 at the best point, n in 1/min",
                    Kind.NUMBER,
                    inlet.specificSpeed(),
                    DEFINITION,
                    in("n", Kind.FREQUENCY, inlet.best().speedPs()),
                    in("Q", Kind.FLOW, inlet.best().flowM3ps()),
                    in("NPSHr", Kind.HEAD, inlet.requiredM())));
    if (suction.requiredM().isPresent()) {
      double required = suction.requiredM().getAsDouble();
      w.step(
          "NPSH",
          "NPSH that must be available to " + pump.name(),
          "NPSH = max(R NPSHr, NPSHr + M)",
          Kind.HEAD,
          suction.margin().neededM(required),
          "liquor with sand and gas, wide end of 1.2 to 1.5, from memory, unverified, or more by"
              + " ANSI/HI 9.6.1 for an inlet that works hard; NPSHr by the maker's points, at another"
              + " speed as its square"
              + (suction.viscousRatio() > 1 ? ", times the factor of the thick liquid" : ""),
          in("NPSHr", Kind.HEAD, required),
          in("R", Kind.NUMBER, suction.margin().leastRatio()),
          in("M", Kind.HEAD, suction.margin().leastDifferenceM()));
    }
  }

  private static List<Step> pulsation(Design design, PulsationResult pulsation) {
    Working w = new Working("pulsation");
    PistonSpec spec = (PistonSpec) design.pump().orElseThrow();
    int cylinders = spec.pulsation().orElseThrow().cylinders();
    double passed = pulsation.passed();
    boolean rams = spec.pulsation().orElseThrow().rams().isPresent();
    double crank = Measure.FRACTION.si(spec.pulsation().orElseThrow().rodToCrank());
    String source = rams ? "definition of the motion" : "kinematics of the crank";
    pulsation.vessel().ifPresent(vessel -> vessel(w, vessel, pulsation));
    w.step(
        "q_least",
        "least flow in the line over the mean flow",
        rams
            ? "q = 1 - k (1 - q_pump); q_pump level in a stroke, rising and falling over the"
                + " changeover, 0 in the dwell, over its mean"
            : "q = 1 - k (1 - q_pump); q_pump = sum over the cylinders of sin f + sin f cos f /"
                + " sqrt(L^2 - sin^2 f), over its mean",
        Kind.NUMBER,
        pulsation.ripple().leastRatio(),
        source,
        in("cylinders", Kind.NUMBER, cylinders),
        rams
            ? in(
                "dwell",
                Kind.TIME,
                Measure.TIME.si(spec.pulsation().orElseThrow().rams().orElseThrow().dwell()))
            : in("L", Kind.NUMBER, crank),
        in("k", Kind.NUMBER, passed));
    w.step(
        "q_most",
        "greatest flow in the line over the mean flow",
        "as above",
        Kind.NUMBER,
        pulsation.ripple().greatestRatio(),
        source);
    w.step(
        "h_a",
        "head that speeds up the line at the worst moment",
        "h_a = k sum of (L/g) V |dq/dt|, at most a dV/g of the whole swing",
        Kind.HEAD,
        pulsation.accelerationM(),
        source + "; Joukowsky 1898",
        in("N", Kind.FREQUENCY, Measure.FREQUENCY.si(spec.strokeRate())));
    w.step(
        "p_peak",
        "greatest pressure at the start of the line",
        "p_peak = p + rho_m g h_a",
        Kind.PRESSURE,
        pulsation.peakPa(),
        DEFINITION,
        in("h_a", Kind.HEAD, pulsation.accelerationM()));
    for (Pulse pulse : pulsation.runs()) {
      w.step(
          "V_least",
          "least velocity within a stroke in " + pulse.run(),
          "V_least = q_least V",
          Kind.VELOCITY,
          pulse.leastMps(),
          source,
          in("q_least", Kind.NUMBER, pulsation.ripple().leastRatio()));
      w.step(
          "y",
          "fall of the coarse sand in the longest pause in " + pulse.run(),
          "y = w t",
          Kind.BORE,
          pulse.fallM(),
          "settling velocity at rest",
          in("t", Kind.TIME, pulse.longestS()));
    }
    pulsation
        .relief()
        .ifPresent(
            relief -> {
              w.step(
                  "p_low",
                  "least setting of the relief",
                  "p_low = 1.1 p_peak",
                  Kind.PRESSURE,
                  relief.leastPa(),
                  COMMON,
                  in("p_peak", Kind.PRESSURE, Math.max(pulsation.peakPa(), 0)));
              w.step(
                  "p_high",
                  "greatest setting of the relief",
                  "p_high = p_rating / 1.1",
                  Kind.PRESSURE,
                  relief.greatestPa(),
                  COMMON,
                  in("p_rating", Kind.PRESSURE, pulsation.weakestPa().orElseThrow()));
            });
    return w.steps();
  }

  private static void vessel(Working w, Vessel vessel, PulsationResult pulsation) {
    w.step(
        "f_0",
        "frequency at which the gas of the vessel and the line swing",
        "f_0 = sqrt(n p / (V I)) / (2 pi), I = sum of rho L / A",
        Kind.FREQUENCY,
        vessel.ownPs(),
        "balance of forces on a rigid column and a gas, n = 1.4",
        in("p", Kind.PRESSURE, vessel.absolutePa()),
        in("V", Kind.VOLUME, vessel.gasM3()),
        in("I", Kind.NUMBER, vessel.inertanceKgM4()));
    w.step(
        "k",
        "share of the swing that the vessel lets through",
        vessel.damps() ? "k = 1 / ((f / f_0)^2 - 1)" : "k = 1, because f is not above 1.41 f_0",
        Kind.PERCENT,
        pulsation.passed(),
        "the same balance",
        in("f", Kind.FREQUENCY, vessel.swellsPs()),
        in("f_0", Kind.FREQUENCY, vessel.ownPs()));
  }

  private static RunSpec run(Design design, String name) {
    return design.route().orElseThrow().runs().stream()
        .filter(r -> r.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static List<Step> surge(Design design, SurgeResult surge) {
    Working w = new Working("surge in " + surge.run());
    RunSpec run = run(design, surge.run());
    w.step(
        "dp",
        "surge of a sudden stop",
        new Joukowsky1898(),
        Kind.PRESSURE,
        surge.surgePa(),
        in("a", Kind.VELOCITY, surge.waveMps()),
        in("dV", Kind.VELOCITY, surge.velocityMps()),
        in("rho", Kind.DENSITY, surge.surgePa() / (surge.waveMps() * surge.velocityMps())),
        in("K", Kind.PRESSURE, GassyLiquid.WATER_MODULUS_PA),
        in("D", Kind.BORE, run.pipe().orElseThrow().largestBoreM()),
        in("t", Kind.BORE, run.pipe().orElseThrow().leastWallM()),
        in("E", Kind.PRESSURE, run.pipe().orElseThrow().system().material().shortTermModulusPa()));
    w.step(
        "p",
        "greatest pressure with it",
        "p = p_working + dp",
        Kind.PRESSURE,
        surge.workingPa() + surge.judgedPa(),
        DEFINITION,
        in("p_working", Kind.PRESSURE, surge.workingPa()),
        in("dp", Kind.PRESSURE, surge.judgedPa()));
    surge
        .slow()
        .ifPresent(
            slow ->
                w.step(
                    "dp_T",
                    "surge of a stop in the time given",
                    "dp_T = dp for T <= 2 L/a, else dp (2 L/a) / T",
                    Kind.PRESSURE,
                    slow.surgePa(),
                    "Michaud 1878, from memory, unverified; an even stop",
                    in("T", Kind.TIME, slow.timeS()),
                    in("2L/a", Kind.TIME, slow.returnS())));
    w.step(
        "p_least",
        "gauge pressure that the low half of the wave would bring",
        "p_least = p_steady - dp",
        Kind.PRESSURE,
        surge.lowest().lowestPa(),
        "Joukowsky 1898",
        in("p_steady", Kind.PRESSURE, surge.lowest().steadyPa()),
        in("p_vapour", Kind.PRESSURE, surge.lowest().vapourPa()));
    if (surge.stopS().isPresent()) {
      w.step(
          "T",
          "even time of stopping that keeps the rating",
          "T = 2 rho L dV / (p_rating - p_working)",
          Kind.TIME,
          surge.stopS().getAsDouble(),
          "Michaud 1878",
          in("dV", Kind.VELOCITY, surge.velocityMps()),
          in("p_rating", Kind.PRESSURE, surge.ratingPa().orElseThrow()),
          in("p_working", Kind.PRESSURE, surge.workingPa()));
    }
    return w.steps();
  }

  private static List<Step> stop(Design design, Materials materials, StopResult stop) {
    Working w = new Working("stop and restart");
    double fraction = stop.sandFraction();
    Vehicle vehicle = materials.vehicle(1, fraction);
    double liquid = vehicle.liquid().densityKgM3();
    double yieldPa =
        materials.carrier().rheology().thickened(vehicle.relativeViscosity()).yieldStressPa();
    double length =
        design.route().orElseThrow().runs().stream()
            .mapToDouble(r -> Measure.LENGTH.si(r.length()))
            .sum();
    w.step(
        "m",
        "sand in the line",
        "m = C_t V rho_s",
        Kind.MASS,
        stop.sandKg(),
        DEFINITION,
        in("C_t", Kind.NUMBER, fraction),
        in("V", Kind.VOLUME, stop.volumeM3()),
        in("rho_s", Kind.DENSITY, materials.sandDensityKgM3()));
    for (StoppedRun run : stop.runs()) {
      RunSpec spec = run(design, run.run());
      w.step(
          "y",
          "depth of the bed in " + run.run(),
          "segment of the circle with the share C_t / C_b of its area",
          Kind.BORE,
          run.bedM(),
          "geometry; " + COMMON + " for C_b",
          in("C_t", Kind.NUMBER, fraction),
          in("C_b", Kind.NUMBER, StoppedLine.BED_VOLUME_FRACTION),
          in("D", Kind.BORE, Measure.LENGTH.si(spec.meanBore())));
      run.settlingS()
          .ifPresent(
              t -> {
                if (run.plugM() > 0) {
                  w.step(
                      "t",
                      "least time until the finest sand lies at the foot of " + run.run(),
                      "t = A / (w D cos theta) ln[(L D cos theta + A/sin theta) / (L C_t/C_b D cos theta"
                          + " + A/sin theta)]",
                      Kind.TIME,
                      t,
                      "Ponder 1925; Nakamura and Kuroda 1937, by Kinosita 1949",
                      in("D", Kind.BORE, Measure.LENGTH.si(spec.meanBore())),
                      in("L", Kind.LENGTH, Measure.LENGTH.si(spec.length())));
                } else {
                  w.step(
                      "t",
                      "time until the finest sand lies in " + run.run(),
                      "t = (D - y) / w",
                      Kind.TIME,
                      t,
                      "settling velocity at rest, hindered",
                      in("D", Kind.BORE, Measure.LENGTH.si(spec.meanBore())),
                      in("y", Kind.BORE, run.bedM()),
                      in("w", Kind.FALL, (Measure.LENGTH.si(spec.meanBore()) - run.bedM()) / t));
                }
              });
      w.step(
          "S_slide",
          "slope on which the bed slides in " + run.run(),
          "S_slide = tan theta = mu 2 (sin b - b cos b)/(b - sin b cos b)",
          Kind.PERCENT,
          Math.tan(run.slideRad()),
          WILSON,
          in("mu", Kind.NUMBER, StoppedLine.SLIDING_FRICTION),
          in("y", Kind.BORE, run.bedM()));
    }
    w.step(
        "p_bed",
        "pressure that slides the bed along the whole line",
        "p_bed = sum of L (dp/dx) of a sliding bed",
        Kind.PRESSURE,
        stop.restart().slidingBedPa(),
        WILSON,
        in("mu", Kind.NUMBER, StoppedLine.SLIDING_FRICTION),
        in("rho_s", Kind.DENSITY, materials.sandDensityKgM3()),
        in("rho", Kind.DENSITY, liquid),
        in("C_b", Kind.NUMBER, StoppedLine.BED_VOLUME_FRACTION),
        in("L", Kind.LENGTH, length));
    w.step(
        "p_yield",
        "pressure that breaks the yield stress",
        "p_yield = sum of 4 tau_y L / D",
        Kind.PRESSURE,
        stop.restart().yieldPa(),
        "balance of forces; the stress after rest is higher",
        in("tau_y", Kind.STRESS, yieldPa),
        in("L", Kind.LENGTH, length));
    for (Plug plug : stop.plugs()) {
      double weight =
          Physics.GRAVITY
              * (materials.sandDensityKgM3() - liquid)
              * StoppedLine.BED_VOLUME_FRACTION;
      w.step(
          "p_plug",
          "pressure beyond its weight that drags the plug at " + plug.where() + ", liquid seeping",
          "p_plug = sum of w_s (2 mu cos theta + sin theta) L, less the weight of climbing parts",
          Kind.PRESSURE,
          plug.frictionPa(),
          WILSON,
          in("w_s", Kind.PRESSURE_GRADIENT, weight),
          in("mu", Kind.NUMBER, StoppedLine.SLIDING_FRICTION),
          in("L", Kind.LENGTH, plug.parts().lengthM()));
      plug.wedgedPa()
          .ifPresent(
              wedged ->
                  w.step(
                      "p_wedge",
                      "the same when it is pushed like a cork",
                      "-d sigma/dx = (4 mu k/D) sigma + w_s (2 mu cos theta + sin theta), sigma = 0"
                          + " at its far end, less the weight of climbing parts",
                      Kind.PRESSURE,
                      wedged,
                      "Janssen 1895, friction reversed; k by Jaky 1944, from memory, unverified",
                      in("k", Kind.NUMBER, PackedPlug.STRESS_RATIO),
                      in("D", Kind.BORE, plug.boreM())));
      plug.movableM()
          .ifPresent(
              most ->
                  w.step(
                      "L_most",
                      "the longest plug that the pressure left for it moves like a cork",
                      "L_most = D/(4 mu k) ln(1 + 4 mu k p / (w D))",
                      Kind.LENGTH,
                      most,
                      "the same balance",
                      in("p_available", Kind.PRESSURE, stop.availablePa()),
                      in("p_static", Kind.PRESSURE, stop.staticPa())));
    }
    w.step(
        "p_low",
        "the least that restarting can take",
        "p_low = p_static + max(p_bed, p_yield, p_plug)",
        Kind.PRESSURE,
        stop.staticPa() + stop.restart().lowPa(),
        "judgement of this program",
        in("p_static", Kind.PRESSURE, stop.staticPa()));
    stop.restart()
        .highPa()
        .ifPresent(
            high ->
                w.step(
                    "p_high",
                    "as much as restarting may take",
                    "p_high = p_static + 2 (p_bed + p_yield) + max(2 p_plug, p_wedge)",
                    Kind.PRESSURE,
                    stop.staticPa() + high,
                    "judgement of this program",
                    in("p_static", Kind.PRESSURE, stop.staticPa())));
    stop.supply().ifPresent(supply -> supply(w, supply));
    stop.flush()
        .ifPresent(
            flush -> {
              w.step(
                  "Q_flush",
                  "flow of water that keeps this sand moving with margin in every run",
                  "least flow at which V >= velocity to pass, in water",
                  Kind.FLOW,
                  flush.flowM3ps(),
                  "rule of the deposition velocity");
              w.step(
                  "t_flush",
                  "time of the flush",
                  "t = 2 V / Q_flush",
                  Kind.TIME,
                  flush.timeS(),
                  COMMON + " for 2",
                  in("V", Kind.VOLUME, stop.volumeM3()),
                  in("Q_flush", Kind.FLOW, flush.flowM3ps()));
            });
    return w.steps();
  }

  private static void supply(Working w, FlushFlow supply) {
    if (supply.solved()) {
      String source = "solved by scan and Brent's method";
      supply
          .cleanM3ps()
          .ifPresent(
              q ->
                  w.step(
                      "Q_clean",
                      "flow of the supply into the clean line",
                      "H_supply(Q) = H_line(Q)",
                      Kind.FLOW,
                      q,
                      source));
      supply
          .loadedM3ps()
          .ifPresent(
              q ->
                  w.step(
                      "Q_full",
                      "flow of the supply while the line is full of its sand in water",
                      "H_supply(Q) = H_line(Q, C_t) rho_m / rho",
                      Kind.FLOW,
                      q,
                      source));
      supply
          .bedM3ps()
          .ifPresent(
              q ->
                  w.step(
                      "Q_bed",
                      "flow of the supply over the settled bed",
                      "H_supply(Q) = H_line(Q), friction by the hydraulic diameter of what the bed"
                          + " leaves, as rough as the larger of wall and d85",
                      Kind.FLOW,
                      q,
                      source));
    }
    for (OverBed over : supply.runs()) {
      if (over.velocityMps() > 0) {
        w.step(
            "V_bed",
            "velocity of the flush over the bed in " + over.run(),
            "V = Q_bed / (A - A_bed)",
            Kind.VELOCITY,
            over.velocityMps(),
            DEFINITION);
      }
    }
  }

  private static List<Step> day(Design design, ServiceResult result, Day day) {
    Working w = new Working(day == result.days().get(0) ? "day" : "day: " + day.state());
    Point point =
        result.states().stream()
            .filter(s -> s.name().equals(day.state()))
            .findFirst()
            .orElseThrow()
            .point()
            .orElseThrow();
    double volume =
        Measure.VOLUME.si(design.service().operation().orElseThrow().dailyVolume().orElseThrow());
    w.step(
        "t",
        "time that the pumps run in a day",
        "t = D / Q",
        Kind.HOURS,
        day.runningS(),
        DEFINITION,
        in("D", Kind.VOLUME, volume),
        in("Q", Kind.FLOW, point.flowM3ps()));
    day.startsPs()
        .ifPresent(
            starts ->
                w.step(
                    "n",
                    "most frequent starts",
                    "n = Q / (4 B)",
                    Kind.STARTS,
                    starts,
                    "sump filling at half the flow; from memory, unverified, and derived",
                    in("Q", Kind.FLOW, point.flowM3ps()),
                    in(
                        "B",
                        Kind.VOLUME,
                        Measure.VOLUME.si(
                            design
                                .service()
                                .operation()
                                .orElseThrow()
                                .batchVolume()
                                .orElseThrow()))));
    if (point.inputW().isPresent()) {
      w.step(
          "E",
          "energy drawn in a day",
          "E = P_in t",
          Kind.ENERGY,
          day.energyJ(),
          DEFINITION,
          in("P_in", Kind.POWER, point.inputW().getAsDouble()),
          in("t", Kind.TIME, day.runningS()));
    }
    day.energyPerSandJpKg()
        .ifPresent(
            energy ->
                w.step(
                    "e",
                    "energy drawn per mass of sand",
                    "e = E / m",
                    Kind.SPECIFIC_ENERGY,
                    energy,
                    DEFINITION,
                    in("E", Kind.ENERGY, day.energyJ()),
                    in("m", Kind.MASS, day.sandKg())));
    return w.steps();
  }

  private static List<Step> screw(Design design, Screw screw) {
    Working w = new Working("screw");
    ScrewSpec spec = design.service().screw().orElseThrow();
    screw
        .pens()
        .ifPresent(
            pens ->
                w.step(
                    "Q_pens",
                    "load that the pens bring",
                    "Q_pens = B / t",
                    Kind.FLOW,
                    pens.loadM3ps(),
                    "balance of the pens, at its greatest",
                    in("B", Kind.VOLUME, pens.batchM3()),
                    in("t", Kind.TIME, pens.scrapeS())));
    w.step(
        "phi",
        "filling of the trough that the load asks",
        ScrewConveyor.EQUATION + ", solved for phi",
        Kind.PERCENT,
        screw.loading().value(),
        ScrewConveyor.SOURCE.toString(),
        in("Q", Kind.FLOW, screw.loadM3ps()),
        in("D", Kind.BORE, Measure.LENGTH.si(spec.diameter())),
        in("d", Kind.BORE, Measure.LENGTH.si(spec.shaft())),
        in("S", Kind.BORE, Measure.LENGTH.si(spec.pitch())),
        in("n", Kind.FREQUENCY, Measure.FREQUENCY.si(spec.speed())),
        in("slope", Kind.PERCENT, Measure.FRACTION.si(spec.slope())));
    w.step(
        "P",
        "power at its shaft",
        "P = m g (lambda L + H) + 50 W/m2 D L",
        Kind.POWER,
        screw.powerW(),
        ScrewConveyor.SOURCE + "; from memory, unverified",
        in("m", Kind.MASS_FLOW, screw.loadM3ps() * screw.densityKgM3()),
        in("lambda", Kind.NUMBER, ScrewConveyor.ABRASIVE_RESISTANCE),
        in("L", Kind.LENGTH, Measure.LENGTH.si(spec.length())));
    return w.steps();
  }

  private static List<Step> gravityRun(Design design, Materials materials, GravityRun run) {
    Working w = new Working("gravity pipe");
    GravityRunSpec spec = design.service().gravityRun().orElseThrow();
    Step.Input bore = in("D", Kind.BORE, Measure.LENGTH.si(spec.bore()));
    Step.Input slope = in("S", Kind.PERCENT, Measure.FRACTION.si(spec.slope()));
    Step.Input manning = in("n", Kind.NUMBER, Measure.FRACTION.si(spec.manning()));
    w.step(
        "Q_most",
        "the most that it carries without pressure, at 94 % of its depth",
        "Q = A R^(2/3) S^(1/2) / n",
        Kind.FLOW,
        run.greatestM3ps(),
        "Manning 1891",
        bore,
        slope,
        manning);
    if (run.flow().isEmpty()) {
      return w.steps();
    }
    PartFullFlow flow = run.flow().get();
    SelfCleansing cleansing = run.cleansing().orElseThrow();
    w.step(
        "V",
        "mean velocity at its depth of " + Math.round(100 * flow.wetted().depthShare()) + " %",
        "V = R^(2/3) S^(1/2) / n, with A V = Q",
        Kind.VELOCITY,
        flow.velocityMps(),
        "Manning 1891",
        in("Q", Kind.FLOW, Measure.FLOW.si(spec.flow())),
        in("R", Kind.BORE, flow.hydraulicRadiusM()),
        slope,
        manning);
    w.step(
        "tau",
        "tractive stress",
        "tau = rho g R S",
        Kind.STRESS,
        cleansing.stressPa(),
        "balance of forces",
        in("rho", Kind.DENSITY, materials.carrier().densityKgM3()),
        in("R", Kind.BORE, flow.hydraulicRadiusM()),
        slope);
    w.step(
        "tau_needed",
        "stress that moves the coarse sand",
        "tau = max(theta (rho_s - rho) g d, 0.867 Pa (d / 1 mm)^0.277)",
        Kind.STRESS,
        cleansing.neededStressPa(),
        "Shields by Soulsby 1997; Merritt 2009, power from memory, unverified",
        in("rho_s", Kind.DENSITY, materials.sandDensityKgM3()),
        in("d", Kind.GRAIN, materials.coarse().d85M()));
    return w.steps();
  }
}
