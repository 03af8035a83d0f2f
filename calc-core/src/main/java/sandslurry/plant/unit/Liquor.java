package sandslurry.plant.unit;

/**
 * What the liquor of a closed loop thickens to, from two numbers.
 *
 * <p>At rest all that is not caught leaves with the surplus, and the surplus is all liquid that
 * comes in and does not leave otherwise. With S the dry matter not caught and W the net water
 * (water in manure, wash and rain, less evaporation and water in the solids taken out), the liquor
 * holds
 *
 * <pre>TS = S / (S + W)</pre>
 *
 * <p>by mass. How much is recycled does not appear: recycling more of a thick liquid dilutes
 * nothing. What helps is less S (catch more) or more W (fresh water), and nothing else. Dissolved
 * salts are caught by nothing, so for them S is all that is excreted. Derived from the balance; no
 * source needed.
 */
public final class Liquor {
  private Liquor() {}

  /**
   * The total solids that the liquor settles at.
   *
   * @param solidsNotCaughtKgps dry matter that no separator catches [kg/s]
   * @param waterKgps net water [kg/s]
   * @return S / (S + W); 0 when nothing comes in
   */
  public static double limit(double solidsNotCaughtKgps, double waterKgps) {
    notNegative("dry matter", solidsNotCaughtKgps);
    notNegative("water", waterKgps);
    double all = solidsNotCaughtKgps + waterKgps;
    return all > 0 ? solidsNotCaughtKgps / all : 0;
  }

  /**
   * Net water that keeps the liquor at a target.
   *
   * @param solidsNotCaughtKgps dry matter that no separator catches [kg/s]
   * @param target total solids wanted, 0 (excluded) to 1
   * @return W = S (1 − TS) / TS [kg/s]
   */
  public static double waterFor(double solidsNotCaughtKgps, double target) {
    notNegative("dry matter", solidsNotCaughtKgps);
    if (!(target > 0 && target <= 1)) {
      throw new IllegalArgumentException("the target lies in 0 (excluded) to 1 but was " + target);
    }
    return solidsNotCaughtKgps * (1 - target) / target;
  }

  /**
   * Share of the dry matter that must be caught to keep the liquor at a target without more water.
   * The water that leaves with the solids is left to the giver of W.
   *
   * @param solidsKgps all dry matter that comes in [kg/s]
   * @param waterKgps net water [kg/s]
   * @param target total solids wanted, 0 to below 1
   * @return 1 − W TS / ((1 − TS) S), 0 when nothing need be caught
   */
  public static double captureFor(double solidsKgps, double waterKgps, double target) {
    notNegative("dry matter", solidsKgps);
    notNegative("water", waterKgps);
    if (!(target >= 0 && target < 1)) {
      throw new IllegalArgumentException("the target lies in 0 to 1 but was " + target);
    }
    double mayStay = waterKgps * target / (1 - target);
    return mayStay >= solidsKgps ? 0 : 1 - mayStay / solidsKgps;
  }

  /**
   * How fast the liquor of a mixed loop approaches its limit: what the loop holds at rest over what
   * comes in.
   *
   * @param heldAtRestKg mass of the constituent in the loop at rest [kg]
   * @param inflowKgps inflow of the constituent that is not caught [kg/s]
   * @return the time constant; by then 63 % of the way is done [s]
   */
  public static double timeConstantS(double heldAtRestKg, double inflowKgps) {
    notNegative("mass held", heldAtRestKg);
    if (!(inflowKgps > 0)) {
      throw new IllegalArgumentException("the inflow must be > 0 but was " + inflowKgps + " kg/s");
    }
    return heldAtRestKg / inflowKgps;
  }

  /**
   * The time in which 95 % of the way to the limit is done: three time constants.
   *
   * @param timeConstantS the time constant [s]
   * @return the time [s]
   */
  public static double restsInS(double timeConstantS) {
    return -Math.log1p(-0.95) * timeConstantS;
  }

  private static void notNegative(String what, double value) {
    if (!(value >= 0 && Double.isFinite(value))) {
      throw new IllegalArgumentException(what + " must be >= 0 but was " + value);
    }
  }
}
