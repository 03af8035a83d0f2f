package sandslurry.separation.channel;

import java.util.List;

/** The catalogue of scour criteria. */
public final class ScourModels {
  /** Camp's criterion at the first movement of uniform grains. */
  public static final ScourModel CAMP = new CampScour1946(0.04);

  /** The Shields curve. */
  public static final ScourModel SHIELDS = new ShieldsSoulsby1997();

  private ScourModels() {}

  /**
   * Every criterion of the family.
   *
   * @return the criteria that judge a lane first, then Camp's for full self-cleansing
   */
  public static List<ScourModel> all() {
    return List.of(CAMP, SHIELDS, new CampScour1946(0.06));
  }
}
