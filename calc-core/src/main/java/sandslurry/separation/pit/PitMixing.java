package sandslurry.separation.pit;

import java.util.ArrayList;
import java.util.List;
import sandslurry.correlation.Estimate;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Liquid;
import sandslurry.separation.Numbers;
import sandslurry.separation.UnitFeed;
import sandslurry.units.Kind;

/**
 * What a mixer does with the sand in a pit, class by class.
 *
 * <p>A pit can be mixed too little or too much. Too little leaves sand on its floor, where it sets
 * hard. Too much, in a pit that liquor leaves over a weir or by a pump before the separator, sends
 * sand along with that liquor that should have stayed for the separator. Which of the two is wanted
 * depends on what the pit is for; both are therefore told.
 *
 * @param speedRps speed of the mixer [1/s]
 * @param powerW power it draws [W]
 * @param speedsRps just-suspended speed of each class, with all the sand as load [1/s]
 * @param suspended whether each class is suspended
 * @param residenceTimeS mean stay of the liquor in the pit [s]
 */
public record PitMixing(
    double speedRps,
    double powerW,
    List<Estimate> speedsRps,
    List<Boolean> suspended,
    double residenceTimeS) {
  private static final Equation RATIO =
      Equation.of(
          "r",
          "speed over that which just suspends all sand",
          "N/N_js",
          Kind.NUMBER,
          Equation.DEFINITION,
          "N 1/s, N_js 1/s");
  private static final Equation POWER =
      Equation.of(
          "P",
          "power of the mixer",
          "N_P rho N^3 D^5",
          Kind.POWER,
          "definition of the power number N_P",
          "N_P, rho kg/m3, N 1/s, D m");

  /** Copies the lists. */
  public PitMixing {
    speedsRps = List.copyOf(speedsRps);
    suspended = List.copyOf(suspended);
  }

  /**
   * Judges a mixer in a pit.
   *
   * @param impeller the mixer
   * @param speedRps its speed, 0 when it stands [1/s]
   * @param feed what flows through the pit, which holds the same mixture
   * @param volumeM3 volume of liquor in the pit [m3]
   * @return the judgement
   */
  public static PitMixing of(Impeller impeller, double speedRps, UnitFeed feed, double volumeM3) {
    Numbers.notNegative("the speed", speedRps, "1/s");
    Numbers.positive("the volume of the pit", volumeM3, "m3");
    Zwietering1958 zwietering = new Zwietering1958();
    double load = feed.sandTotalKgps() / feed.liquidKgps();
    Liquid liquid = feed.liquid();
    List<Estimate> speeds = new ArrayList<>();
    List<Boolean> suspended = new ArrayList<>();
    for (double size : feed.sizesM()) {
      Estimate speed = zwietering.speedRps(impeller, size, liquid, feed.sandDensityKgM3(), load);
      speeds.add(speed);
      suspended.add(speedRps >= speed.value());
    }
    return new PitMixing(
        speedRps,
        impeller.powerW(speedRps, mixtureDensityKgM3(feed)),
        speeds,
        suspended,
        volumeM3 / feed.mixtureM3ps());
  }

  /**
   * Keeps the steps of speed and power, for the grains that need the highest speed.
   *
   * @param impeller the mixer
   * @param feed the feed that was judged
   * @param trace what keeps the steps
   */
  public void steps(Impeller impeller, UnitFeed feed, Trace trace) {
    int coarsest = 0;
    for (int k = 1; k < speedsRps.size(); k++) {
      coarsest = speedsRps.get(k).value() > speedsRps.get(coarsest).value() ? k : coarsest;
    }
    double just =
        new Zwietering1958()
            .speedRps(
                impeller,
                feed.sizesM().get(coarsest),
                feed.liquid(),
                feed.sandDensityKgM3(),
                feed.sandTotalKgps() / feed.liquidKgps(),
                trace)
            .value();
    if (just > 0) {
      trace.step(RATIO, speedRatio(), speedRps, just);
    }
    trace.step(
        POWER,
        powerW,
        impeller.powerNumber(),
        mixtureDensityKgM3(feed),
        speedRps,
        impeller.diameterM());
  }

  private static double mixtureDensityKgM3(UnitFeed feed) {
    double liquor = feed.liquid().densityKgM3();
    return liquor + feed.volumeFraction() * (feed.sandDensityKgM3() - liquor);
  }

  /**
   * The part of a class that a mixer does not hold up: 1 at rest, 0 from the just-suspended speed
   * on, and between them the share of the power that is lacking, 1 − (N/Njs)³. The ramp is ours; no
   * published relation is used for it.
   *
   * @param speedRps speed of the mixer [1/s]
   * @param justSuspendedRps just-suspended speed of the class, 0 when there is nothing to suspend
   * @return the part, 0 to 1
   */
  public static double heldDown(double speedRps, double justSuspendedRps) {
    Numbers.notNegative("the speed", speedRps, "1/s");
    if (speedRps >= justSuspendedRps) {
      return speedRps > 0 ? 0 : 1;
    }
    double ratio = speedRps / justSuspendedRps;
    return 1 - ratio * ratio * ratio;
  }

  /**
   * Speed over the highest of the just-suspended speeds.
   *
   * @return below 1: some sand stays on the floor; above 1: all is carried and each tenth more
   *     takes a third more power (N³); 1 when there is nothing to suspend
   */
  public double speedRatio() {
    double highest = speedsRps.stream().mapToDouble(Estimate::value).max().orElse(0);
    return highest > 0 ? speedRps / highest : 1;
  }

  /**
   * Mass of sand that the mixer leaves on the floor.
   *
   * @param feed the feed that was judged
   * @return mass flow of the classes that are not suspended [kg/s]
   */
  public double leftKgps(UnitFeed feed) {
    return feed.sandKgps(suspended.stream().map(up -> up ? 0.0 : 1.0).toList());
  }

  /**
   * Mass of sand that goes along with whatever leaves the pit.
   *
   * @param feed the feed that was judged
   * @return mass flow of the classes that are suspended [kg/s]
   */
  public double carriedKgps(UnitFeed feed) {
    return feed.sandTotalKgps() - leftKgps(feed);
  }
}
