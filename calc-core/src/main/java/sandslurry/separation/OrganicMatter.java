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
 * liquor. Flushed dairy manure agrees on the share: half of its solids were in the lowest quarter
 * of a settling column after 4 h, 58 % after 49 days (Converse and Karthikeyan 2002, ASAE paper
 * 024156, abstract read), so a third of those above it settled soon and little more ever did; 55 %
 * of the fibre, which is 54 % of the solids, is 30 %.
 *
 * <p>In a thick liquor the same particle falls more slowly. As for the sand beside it, the
 * viscosity of the liquor counts: {@link #in} takes the velocity as inverse to it, the law of
 * Stokes, which holds for flakes of these velocities. Without that a box in a liquor of 2 % solids
 * would be said to give sand of 11 % organic matter, where recycled sand was found to have 1.1 % as
 * it was bedded (Bernard, Bray and West 2003, ASAE publication 701P0203, abstract read).
 *
 * <p>What has settled moves again at a velocity that grit chambers know well: they are run at 0.3
 * m/s, 0.2 to 0.4, so that grit stays and organic matter passes (Vesilind 2003). At 0.3 m/s the
 * scour formula of Camp moves organic particles up to 3 mm of density 1200 kg/m3 and up to 12 mm of
 * 1050 kg/m3 (Hendricks, example 7.1).
 *
 * <p>The columns held thin liquor. A thick one slows fibre as it slows any grain, if it is one
 * liquid to the fibre; but the fibre is what makes it thick, so that nobody knows how much. Both
 * can be asked for: slowed by the viscosity, and not slowed at all, which leaves most matter in the
 * sand.
 *
 * @param settleableShare share of the fibre that settles, 0 to 1
 * @param settlingVelocityMps velocity at which it settles [m/s]
 * @param scourVelocityMps mean velocity of a channel at which settled organic matter moves [m/s]
 * @param slowed whether a thick liquor slows it
 */
public record OrganicMatter(
    double settleableShare, double settlingVelocityMps, double scourVelocityMps, boolean slowed) {
  /**
   * The middle of the published share, the published settling velocity, and grit-chamber practice.
   */
  public static final OrganicMatter FEEDLOT = new OrganicMatter(0.55, 0.003, 0.3, true);

  /** Checks the bounds. */
  public OrganicMatter {
    Numbers.share("the share that settles", settleableShare);
    Numbers.positive("the settling velocity", settlingVelocityMps, "m/s");
    Numbers.positive("the scour velocity", scourVelocityMps, "m/s");
  }

  /**
   * The same matter in a thicker liquor.
   *
   * @param relativeViscosity viscosity of the liquor over that of water; below 1 counts as 1
   * @return with the settling velocity over that ratio, if it is slowed
   */
  public OrganicMatter in(double relativeViscosity) {
    Numbers.positive("the relative viscosity", relativeViscosity, "");
    return slowed
        ? new OrganicMatter(
            settleableShare,
            settlingVelocityMps / Math.max(1, relativeViscosity),
            scourVelocityMps,
            true)
        : this;
  }
}
