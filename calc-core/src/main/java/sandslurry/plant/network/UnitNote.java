package sandslurry.plant.network;

/**
 * What a unit says of a feed that it cannot treat as it should.
 *
 * @param unit the unit
 * @param reason what is the matter
 * @param value the number that shows it: a share by mass or volume, a load over capacity, or a head
 * @param wanted what was wanted instead; equal to the value where nothing was, and of a screw the
 *     time in which the sand that it leaves fills half of its box [s]
 */
public record UnitNote(String unit, Reason reason, double value, double wanted) {
  /** What is the matter with a feed. */
  public enum Reason {
    /** The sand comes faster than the screw lifts it; the value is its load over its capacity. */
    SCREW_OVERLOADED,
    /** The liquor is thicker than any whose flow was measured; the value is its total solids. */
    TOO_THICK,
    /** The underflow comes as a rope; the value is its sand by volume. */
    ROPES,
    /** A cyclone is fed too slowly; value and wanted are heads of its mixture [m]. */
    NO_VORTEX,
    /**
     * The feed is thicker than the cake wanted; value and wanted are the dry matter of the cake.
     */
    CAKE_DRIER,
    /** There is too little liquor for the moisture of the solids; the value is their dry matter. */
    LIQUOR_SHORT
  }

  /**
   * Whether another note says the same of the same unit, maybe with another number.
   *
   * @param other the other note
   * @return true when unit and reason are the same
   */
  public boolean like(UnitNote other) {
    return unit.equals(other.unit) && reason == other.reason;
  }
}
