package sandslurry.separation;

/**
 * The organic matter of manure as a settling unit sees it: a part that settles, at one velocity,
 * and a part that never does.
 *
 * <p>Settling columns with faeces and pen manure of feedlot cattle found just that: 35 to 75 % of
 * the material settled quickly, the rest too slowly for any sedimentation system to retain, and a
 * design was to use a settling velocity of at most 3 mm/s (abstract on the settling of Australian
 * feedlot manure, read at acnpsearch.unibo.it; Lott, Loch and Watts 1994, Transactions ASAE
 * 37(1):281-285, the name of the paper from memory, unverified). That is beef manure in dilute
 * liquor: for dairy manure in a thick liquor the velocity is an upper limit.
 *
 * <p>What has settled moves again at a velocity that grit chambers know well: they are run at 0.3
 * m/s, 0.2 to 0.4, so that grit stays and organic matter passes (Vesilind 2003). At 0.3 m/s the
 * scour formula of Camp moves organic particles up to 3 mm of density 1200 kg/m3 and up to 12 mm of
 * 1050 kg/m3 (Hendricks, example 7.1).
 *
 * @param settleableShare share of the fibre that settles, 0 to 1
 * @param settlingVelocityMps velocity at which it settles [m/s]
 * @param scourVelocityMps mean velocity of a channel at which settled organic matter moves [m/s]
 */
public record OrganicMatter(
    double settleableShare, double settlingVelocityMps, double scourVelocityMps) {
  /**
   * The middle of the published share, the published settling velocity, and grit-chamber practice.
   */
  public static final OrganicMatter FEEDLOT = new OrganicMatter(0.55, 0.003, 0.3);

  /** Checks the bounds. */
  public OrganicMatter {
    Numbers.share("the share that settles", settleableShare);
    Numbers.positive("the settling velocity", settlingVelocityMps, "m/s");
    Numbers.positive("the scour velocity", scourVelocityMps, "m/s");
  }
}
