package sandslurry.transport.headloss;

import java.util.List;
import sandslurry.correlation.Family;

/** The catalogue of head-loss models for settling slurries. */
public final class HeadLosses {
  /**
   * The model used unless another is asked for: it is made for sand of 0.2 to 6 mm, knows the
   * grading and the viscosity of the carrier, and has a physical picture behind it.
   */
  public static final HeadLossModel DEFAULT = new WilsonAddieSellgren2006();

  private static final HeadLossModel TURIAN_YUAN = new TurianYuan1977();
  private static final HeadLossModel DURAND = new DurandCondolios1952();
  private static final HeadLossModel WASP = new WaspTwoPart1977();
  private static final HeadLossModel NEWITT = new Newitt1955();

  /** Every correlation of the family. */
  public static final Family<HeadLossModel> FAMILY =
      Family.of(
          "head loss with solids",
          DEFAULT,
          TURIAN_YUAN,
          DURAND,
          WASP,
          NEWITT,
          new ZandiGovatos1967HeadLoss(),
          new EquivalentLiquid());

  private HeadLosses() {}

  /**
   * The models that are shown beside each other to tell how uncertain the head loss is: the default
   * and four of other origin, each in or out of its own range.
   *
   * @return the models, the default first
   */
  public static List<HeadLossModel> bracket() {
    return List.of(DEFAULT, TURIAN_YUAN, DURAND, WASP, NEWITT);
  }
}
