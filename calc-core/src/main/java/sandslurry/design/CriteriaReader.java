package sandslurry.design;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Speed;
import sandslurry.transport.deposition.DepositionVelocities;
import sandslurry.transport.deposition.DepositionVelocities.Role;
import sandslurry.units.Measure;

/** Reads what a design is judged by. */
final class CriteriaReader {
  private static final Limits<Dimensionless> MARGIN = Limits.of(Measure.FRACTION, "0 %", "200 %");
  private static final Limits<Dimensionless> PRESSURE_SHARE =
      Limits.of(Measure.FRACTION, "10 %", "100 %");
  private static final Limits<Speed> MARGIN_SPEED = Limits.of(Measure.SPEED, "0 m/s", "3 m/s");
  private static final Limits<Speed> WEAR_SPEED = Limits.of(Measure.SPEED, "0.5 m/s", "10 m/s");

  private static final Map<String, Role> ROLES =
      DesignReader.named(Role.values(), role -> role.name().toLowerCase(Locale.ROOT));

  private CriteriaReader() {}

  /** The criteria, or null when one of them is wrong, which has been told then. */
  static Criteria criteria(Section root) {
    Section part = root.part("criteria").orElseGet(() -> root.blank("criteria"));
    Optional<Quantity<Dimensionless>> fraction =
        part.orDefault("velocityMarginShare", MARGIN, "15 %");
    Optional<Quantity<Speed>> velocity = part.orDefault("velocityMargin", MARGIN_SPEED, "0.3 m/s");
    Optional<Quantity<Speed>> wear = part.orDefault("wearVelocity", WEAR_SPEED, "3 m/s");
    Optional<Quantity<Dimensionless>> pressure =
        part.orDefault("pressureShare", PRESSURE_SHARE, "72 %");
    Optional<Quantity<Dimensionless>> capture =
        part.orDefault("sandCapture", DesignReader.SHARE, "75 %");
    Optional<Quantity<Dimensionless>> floor =
        part.orDefault("floorShare", DesignReader.SHARE, "1 %");
    Map<String, Role> roles = new LinkedHashMap<>();
    part.part("depositionRoles")
        .ifPresent(
            section -> {
              DepositionVelocities.all()
                  .forEach(
                      model ->
                          section
                              .choice(model.id(), ROLES)
                              .ifPresent(role -> roles.put(model.id(), role)));
              section.refuseUnknown();
              if (DepositionVelocities.all().stream()
                  .map(m -> roles.getOrDefault(m.id(), DepositionVelocities.defaultRole(m)))
                  .noneMatch(role -> role == Role.GOVERNING)) {
                part.problem("depositionRoles", "must leave at least one correlation governing");
              }
            });
    boolean graded = part.choice("worstSizeGoverns", DesignReader.YES_NO).orElse(true);
    part.refuseUnknown();
    return Section.there(fraction, velocity, wear, pressure, capture, floor)
        ? new Criteria(
            fraction.get(),
            velocity.get(),
            roles,
            graded,
            wear.get(),
            pressure.get(),
            capture.get(),
            floor.get())
        : null;
  }
}
