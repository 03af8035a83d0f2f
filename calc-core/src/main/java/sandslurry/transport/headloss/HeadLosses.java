package sandslurry.transport.headloss;

import java.util.List;
import java.util.stream.Collectors;

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

  private static final List<HeadLossModel> ALL =
      List.of(
          DEFAULT,
          TURIAN_YUAN,
          DURAND,
          WASP,
          NEWITT,
          new ZandiGovatos1967HeadLoss(),
          new EquivalentLiquid());

  private HeadLosses() {}

  /**
   * Every model of the family.
   *
   * @return the models, the default first
   */
  public static List<HeadLossModel> all() {
    return ALL;
  }

  /**
   * The models that are shown beside each other to tell how uncertain the head loss is: the default
   * and four of other origin, each in or out of its own range.
   *
   * @return the models, the default first
   */
  public static List<HeadLossModel> bracket() {
    return List.of(DEFAULT, TURIAN_YUAN, DURAND, WASP, NEWITT);
  }

  /**
   * Finds a model by its key.
   *
   * @param id the key, as in {@link HeadLossModel#id}
   * @return the model
   * @throws IllegalArgumentException if no model has that key
   */
  public static HeadLossModel byId(String id) {
    return ALL.stream()
        .filter(model -> model.id().equals(id))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "no head-loss model is called '"
                        + id
                        + "'; there are "
                        + ALL.stream().map(HeadLossModel::id).collect(Collectors.joining(", "))));
  }
}
