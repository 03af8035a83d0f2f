package sandslurry.design.line;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.units.Measure;

/** The fields of the route of the line: levels, and its runs in the order of flow. */
public final class RouteFields extends Fields<RouteSpec> {
  private static final Type<Double> OUTLET = Type.quantity(Measure.LENGTH, "0 m", "50 m");
  private static final RouteRun RUN = new RouteRun();

  private final Field<Double> level =
      standard("sourceLevel", CommonLimits.LEVEL, "0 m")
          .label("Pit level over start")
          .means("level of the liquid in the pit above the start of the line, negative below it")
          .such("1 m", "3 ft");
  private final Field<Double> outlet =
      standard("outletHead", OUTLET, "0 m")
          .label("Outlet below surface")
          .means("depth of the outlet below the surface that it feeds")
          .such("0.5 m", "2 ft");
  private final Field<List<RouteSpec.RunSpec>> runs =
      list("runs", RUN, "a route needs one pipe run or more")
          .label("Pipe runs in the order of flow")
          .means("the pipe runs in the order of flow");

  /** Declares the fields. */
  public RouteFields() {
    super("route", "transfer line");
  }

  @Override
  protected void check(Values values) {
    values
        .maybe(runs)
        .ifPresent(
            read -> {
              Set<String> names = new HashSet<>();
              for (int i = 0; i < read.size(); i++) {
                if (!names.add(read.get(i).name())) {
                  values
                      .inside(runs)
                      .get(i)
                      .problem(RUN.name, "is the name of another run too: give each its own");
                }
              }
            });
  }

  @Override
  protected Optional<RouteSpec> make(Values values) {
    return Optional.of(new RouteSpec(values.get(level), values.get(outlet), values.get(runs)));
  }

  /** One run of the route. */
  private static final class RouteRun extends RunFields<RouteSpec.RunSpec> {
    RouteRun() {
      super("run", "run");
    }

    @Override
    protected Optional<RouteSpec.RunSpec> make(Values values) {
      return Optional.of(run(values, "run " + (values.index() + 1)));
    }
  }
}
