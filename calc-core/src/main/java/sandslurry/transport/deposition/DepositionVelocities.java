package sandslurry.transport.deposition;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sandslurry.correlation.Family;

/** The catalogue of deposition-velocity correlations and the part that each plays by default. */
public final class DepositionVelocities {
  private static final Map<DepositionVelocityModel, Role> ROLES = roles();

  /** Every correlation of the family, those that set the limit first. */
  public static final Family<DepositionVelocityModel> FAMILY =
      new Family<>("deposition velocity", List.copyOf(ROLES.keySet()));

  private DepositionVelocities() {}

  /** The part that a correlation plays in a judgement. */
  public enum Role {
    /** These make the limit, as {@link DepositionLimit} says, in their range or not. */
    GOVERNING,
    /** The limit is never below these, in their range or not. */
    FLOOR,
    /**
     * These do not set the limit, but to lie below one that is in its range is a disagreement. None
     * does by default.
     */
    COUNTED,
    /** These are shown for comparison and decide nothing. */
    SHOWN
  }

  private static Map<DepositionVelocityModel, Role> roles() {
    Map<DepositionVelocityModel, Role> roles = new LinkedHashMap<>();
    roles.put(DepositionLimit.GILLIES_SHOOK, Role.GOVERNING);
    roles.put(DepositionLimit.WILSON, Role.GOVERNING);
    roles.put(DepositionLimit.CONCENTRATION, Role.GOVERNING);
    roles.put(DepositionLimit.OROSKAR_TURIAN, Role.GOVERNING);
    roles.put(DepositionLimit.MAY, Role.GOVERNING);
    roles.put(DepositionLimit.MACKE, Role.GOVERNING);
    roles.put(DepositionLimit.AB_GHANI, Role.GOVERNING);
    roles.put(DepositionLimit.THOMAS, Role.FLOOR);
    roles.put(new OroskarTurian1980Analytic(), Role.SHOWN);
    roles.put(new TurianHsuMa1987(), Role.SHOWN);
    roles.put(new Wasp1977(), Role.SHOWN);
    roles.put(new WilsonJudge1978(), Role.SHOWN);
    roles.put(new Durand1953(), Role.SHOWN);
    roles.put(DurandPlateau.FRENCH, Role.SHOWN);
    roles.put(DurandPlateau.ENGLISH, Role.SHOWN);
    roles.put(new ZandiGovatos1967(), Role.SHOWN);
    roles.put(new Wilson1986Fit(), Role.SHOWN);
    roles.put(new Gillies2000(), Role.SHOWN);
    return roles;
  }

  /**
   * The part that a correlation plays unless a rule says otherwise.
   *
   * @param model a correlation of {@link #FAMILY}
   * @return its default role
   */
  public static Role defaultRole(DepositionVelocityModel model) {
    return ROLES.get(model);
  }
}
