package sandslurry.design.criteria;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.transport.deposition.DepositionRule;
import sandslurry.transport.deposition.DepositionVelocities;
import sandslurry.transport.deposition.DepositionVelocities.Role;
import sandslurry.transport.deposition.DepositionVelocityModel;
import sandslurry.units.Measure;

/** The fields of what a design is judged by. */
public final class CriteriaFields extends Fields<Criteria> {
  private static final Type<Double> MARGIN = Type.quantity(Measure.FRACTION, "0 %", "200 %");
  private static final Type<Double> PRESSURE = Type.quantity(Measure.FRACTION, "10 %", "100 %");
  private static final Type<Double> MARGIN_SPEED = Type.quantity(Measure.SPEED, "0 m/s", "3 m/s");
  private static final Type<Double> WEAR_SPEED = Type.quantity(Measure.SPEED, "0.5 m/s", "10 m/s");

  private final Field<Double> share =
      standard("velocityMarginShare", MARGIN, "25 %")
          .label("Margin on velocity")
          .means("margin over the deposition velocity, as a share of it")
          .such("30 %");
  private final Field<Double> velocity =
      standard("velocityMargin", MARGIN_SPEED, "0.3 m/s")
          .label("and not less than")
          .means("least margin over the deposition velocity; the larger of the two counts")
          .such("0.3 m/s", "1 ft/s");
  private final Field<Double> wear =
      standard("wearVelocity", WEAR_SPEED, "6 m/s")
          .label("Limit for wear")
          .means(
              "velocity above which wear is a caution; dredging lines run at 5.5 to 6 m/s (Fluid"
                  + " Mechanics, Heat Transfer, and Mass Transfer: Chemical Engineering Practice,"
                  + " page 221)")
          .such("3 m/s", "10 ft/s");
  private final Field<Double> pressure =
      standard("pressureShare", PRESSURE, "72 %")
          .label("Use of pressure rating")
          .means("share of the pressure rating that the working pressure may use")
          .such("72 %");
  private final Field<Double> capture =
      standard("sandCapture", CommonLimits.SHARE, "75 %")
          .label("Sand capture, lane")
          .means("share of the sand that the lane must capture")
          .such("75 %");
  private final Field<Double> floor =
      standard("floorShare", CommonLimits.SHARE, "1 %")
          .label("Sand on a laminar floor")
          .means(
              "share of the sand that may reach the floor of a line in laminar flow; the same share"
                  + " of the coarsest sand need not be held (1 % at most)")
          .such("1 %");
  private final Field<Boolean> graded =
      standard("worstSizeGoverns", Type.yesNo("the worst size of the sand", "d50 alone"), "yes")
          .label("Deposition judged by")
          .means("the grain size by which the deposition velocity is judged");
  private final Field<Map<String, Role>> roles =
      standard("depositionRoles", new RoleFields(), "")
          .label("Roles of the correlations")
          .means(
              "roles of deposition correlations other than their own: governing makes one part of"
                  + " the rule, floor a lower bound, counted turns a pass below it into a caution,"
                  + " shown decides nothing");

  /** Declares the fields and the rules between them. */
  public CriteriaFields() {
    super("criteria", "criteria");
    shownWhen(capture, seen -> seen.beside("lane"));
    rule(
        roles,
        List.of(),
        values -> DepositionRule.governs(values.get(roles)),
        values ->
            "must leave gillies-shook-2002 or wilson-bounded governing: without them there is no"
                + " deposition velocity");
  }

  @Override
  protected Optional<Criteria> make(Values values) {
    return Optional.of(
        new Criteria(
            values.get(share),
            values.get(velocity),
            values.get(roles),
            values.get(graded),
            values.get(wear),
            values.get(pressure),
            values.get(capture),
            values.get(floor)));
  }

  /** A role for each correlation. */
  private static final class RoleFields extends Fields<Map<String, Role>> {
    private final Map<String, Field<Optional<Role>>> roles = new LinkedHashMap<>();

    RoleFields() {
      super("depositionRoles", "roles of the correlations");
      for (DepositionVelocityModel model : DepositionVelocities.FAMILY.all()) {
        roles.put(
            model.id(),
            optional(
                    model.id(),
                    Type.choice(Arrays.asList(Role.values()), RoleFields::word, RoleFields::word),
                    word(DepositionVelocities.defaultRole(model)) + " (default)")
                .label(model.name())
                .means("role of the correlation"));
      }
    }

    private static String word(Role role) {
      return role.name().toLowerCase(Locale.ROOT);
    }

    @Override
    protected Optional<Map<String, Role>> make(Values values) {
      Map<String, Role> chosen = new LinkedHashMap<>();
      roles.forEach((id, field) -> values.get(field).ifPresent(role -> chosen.put(id, role)));
      return Optional.of(chosen);
    }
  }
}
