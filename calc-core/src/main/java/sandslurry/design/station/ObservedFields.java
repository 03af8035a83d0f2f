package sandslurry.design.station;

import java.util.List;
import java.util.Optional;
import sandslurry.design.station.ServiceSpec.ObservedSpec;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.units.Measure;

/** The fields of a pressure and a flow rate read on site. */
public final class ObservedFields extends Fields<ObservedSpec> {
  private final Field<Double> flow =
      needed("flow", CommonLimits.FLOW)
          .label("Flow rate read")
          .means("flow rate of mixture read on site")
          .such("24 L/s", "380 gal/min");
  private final Field<Optional<Double>> flowUncertainty =
      optional(
              "flowUncertainty",
              Type.quantity(Measure.FRACTION, "0 %", "50 %"),
              "default: 5 % (common practice, no source)")
          .label("Uncertainty of it")
          .means("share within which the flow rate read is right, nineteen times out of twenty")
          .such("5 %");
  private final Field<Double> pressure =
      needed("pressure", Type.quantity(Measure.PRESSURE, "-100 kPa", "50 MPa"))
          .label("Pressure read")
          .means("gauge pressure read while that flow rate ran")
          .such("140 kPa", "20 psi");
  private final Field<Boolean> rise =
      standard(
              "pressureIs",
              Type.choice(
                  List.of(false, true),
                  rise -> rise ? "rise of the pump" : "at the line start",
                  rise ->
                      rise
                          ? "the rise from before the pump to behind it"
                          : "at the start of the line, at its height"),
              "at the line start")
          .label("It was read")
          .means(
              "where the pressure was read: at the start of the line, behind any pump, or as the"
                  + " rise from before the pump to behind it at the same height");
  private final Field<Optional<Double>> uncertainty =
      optional(
              "pressureUncertainty",
              Type.quantity(Measure.PRESSURE, "0 kPa", "5 MPa"),
              "default: 3 % of it (common practice, no source)")
          .label("Uncertainty of it")
          .means("pressure within which the pressure read is right, nineteen times out of twenty")
          .such("5 kPa", "1 psi");
  private final Field<Optional<Double>> since =
      optional(
              "runningTimeSinceCleaning",
              Type.quantity(Measure.TIME, "1 min", "100000 h"),
              "not known")
          .label("Running since cleaning")
          .means("hours that the line has run since it was last known to be clean")
          .such("120 h");

  /** The fields. */
  public ObservedFields() {
    super("observed", "reading on site");
  }

  @Override
  protected Optional<ObservedSpec> make(Values values) {
    return Optional.of(
        new ObservedSpec(
            values.get(flow),
            values.get(flowUncertainty),
            values.get(pressure),
            values.get(rise),
            values.get(uncertainty),
            values.get(since)));
  }
}
