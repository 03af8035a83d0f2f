package sandslurry.assessment.stop;

import static sandslurry.correlation.Working.COMMON;
import static sandslurry.correlation.Working.DEFINITION;
import static sandslurry.correlation.Working.in;

import java.util.List;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.stop.StopResult.FlushFlow;
import sandslurry.assessment.stop.StopResult.OverBed;
import sandslurry.assessment.stop.StopResult.Plug;
import sandslurry.assessment.stop.StopResult.StoppedRun;
import sandslurry.correlation.Physics;
import sandslurry.correlation.Working;
import sandslurry.design.Design;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.fact.step.Step;
import sandslurry.material.Vehicle;
import sandslurry.transport.bed.PackedPlug;
import sandslurry.transport.bed.SlidingBed;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** The working behind the line stopped full of sand: its bed, plugs, restart and flush. */
public final class StopWorking {
  private static final String WILSON = "Wilson 1970, balance of forces on a bed";

  private StopWorking() {}

  public static List<Step> steps(Design design, Materials materials, StopResult stop) {
    Working w = new Working("stop and restart");
    double fraction = stop.sandFraction();
    Vehicle vehicle = materials.vehicle(1, fraction);
    double liquid = vehicle.liquid().densityKgM3();
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
    for (int i = 0; i < stop.runs().size(); i++) {
      run(w, design, stop.lying().fraction(fraction, i), stop.runs().get(i));
    }
    w.step(
        "p_bed",
        "pressure that slides the bed along the whole line",
        "p_bed = sum of L (dp/dx) of a sliding bed",
        Kind.PRESSURE,
        stop.restart().slidingBedPa(),
        WILSON,
        in("mu", Kind.NUMBER, SlidingBed.FRICTION),
        in("rho_s", Kind.DENSITY, materials.sandDensityKgM3()),
        in("rho", Kind.DENSITY, liquid),
        in("C_b", Kind.NUMBER, SlidingBed.VOLUME_FRACTION),
        in("L", Kind.LENGTH, length));
    w.step(
        "p_yield",
        "pressure that breaks the yield stress",
        "p_yield = sum of 4 tau_rest L / D",
        Kind.PRESSURE,
        stop.restart().yieldPa(),
        "balance of forces",
        in("tau_rest", Kind.STRESS, stop.lying().restedYieldPa()),
        in("L", Kind.LENGTH, length));
    double weight =
        Physics.GRAVITY * (materials.sandDensityKgM3() - liquid) * SlidingBed.VOLUME_FRACTION;
    stop.plugs().forEach(plug -> plug(w, weight, stop, plug));
    w.step(
        "p_low",
        "the least that restarting can take",
        "p_low = p_static + max(p_bed, p_yield, p_plug), no less than 0",
        Kind.PRESSURE,
        stop.leastPa(),
        "judgement of this program",
        in("p_static", Kind.PRESSURE, stop.staticPa()));
    stop.mostPa()
        .ifPresent(
            high ->
                w.step(
                    "p_high",
                    "as much as restarting may take",
                    "p_high = p_static + 2 (p_bed + p_yield) + max(2 p_plug, p_wedge)",
                    Kind.PRESSURE,
                    high,
                    "judgement of this program",
                    in("p_static", Kind.PRESSURE, stop.staticPa())));
    stop.supply().ifPresent(supply -> supply(w, supply));
    stop.flush()
        .ifPresent(
            flush -> {
              if (flush.clearingM3ps() > 0) {
                w.step(
                    "Q_carry",
                    "flow of water that keeps this sand moving with margin in every run",
                    "least flow at which V >= velocity to pass, in water",
                    Kind.FLOW,
                    flush.clearingM3ps(),
                    "rule of the deposition velocity");
              }
              if (flush.strippingM3ps() > 0) {
                w.step(
                    "Q_strip",
                    "flow of water that strips the liquid off the wall of every run",
                    "least flow at which rho f V^2 / 8 = 2 tau_y",
                    Kind.FLOW,
                    flush.strippingM3ps(),
                    "choice of this program, no source, for 2",
                    in("tau_y", Kind.STRESS, stop.lying().flowingYieldPa()));
              }
              w.step(
                  "t_flush",
                  "time of the flush",
                  "t = 2 V / max(Q_carry, Q_strip)",
                  Kind.TIME,
                  flush.timeS(),
                  COMMON + " for 2",
                  in("V", Kind.VOLUME, stop.volumeM3()),
                  in("Q_carry", Kind.FLOW, flush.clearingM3ps()),
                  in("Q_strip", Kind.FLOW, flush.strippingM3ps()));
            });
    return w.steps();
  }

  private static void run(Working w, Design design, double fraction, StoppedRun run) {
    RunSpec spec = design.route().orElseThrow().run(run.run());
    w.step(
        "y",
        "depth of the bed in " + run.run(),
        "segment of the circle with the share C_t / C_b of its area",
        Kind.BORE,
        run.bedM(),
        "geometry; " + COMMON + " for C_b",
        in("C_t", Kind.NUMBER, fraction),
        in("C_b", Kind.NUMBER, SlidingBed.VOLUME_FRACTION),
        in("D", Kind.BORE, Measure.LENGTH.si(spec.meanBore())));
    run.settlingS()
        .ifPresent(
            t -> {
              if (run.plugM() > 0) {
                w.step(
                    "t",
                    "least time until the finest sand lies at the foot of " + run.run(),
                    "t = A / (w D cos theta) ln[(L D cos theta + A/sin theta) / (L C_t/C_b D cos"
                        + " theta + A/sin theta)]",
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
        in("mu", Kind.NUMBER, SlidingBed.FRICTION),
        in("y", Kind.BORE, run.bedM()));
  }

  private static void plug(Working w, double weight, StopResult stop, Plug plug) {
    w.step(
        "p_plug",
        "pressure beyond its weight that drags the plug at " + plug.where() + ", liquid seeping",
        "p_plug = sum of w_s (2 mu cos theta + sin theta) L, less the weight of climbing parts",
        Kind.PRESSURE,
        plug.frictionPa(),
        WILSON,
        in("w_s", Kind.PRESSURE_GRADIENT, weight),
        in("mu", Kind.NUMBER, SlidingBed.FRICTION),
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
                      "least flow of the supply while water pushes out what stood in the line",
                      "H_supply(Q) = sum of H_water(Q) behind the front + H_line(Q, C_t) rho_m /"
                          + " rho before it",
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
}
