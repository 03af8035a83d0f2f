package sandslurry.report.section;

import java.util.List;
import sandslurry.assessment.stop.PulsationResult;
import sandslurry.assessment.stop.PulsationResult.Pulse;
import sandslurry.report.block.Page;
import sandslurry.report.figure.Column;
import sandslurry.units.Kind;

/** What the report says of the pulsing of a piston pump. */
record PulsationSection(PulsationResult pulsation, Page page) implements SectionWriter {
  void write() {
    heading(1, "Pulsation of the piston pump");
    pulsation
        .vessel()
        .ifPresent(
            vessel ->
                paragraph(
                    "The air vessel lets "
                        + show(Kind.PERCENT, pulsation.passed())
                        + " of the pulsation into the line"
                        + (vessel.damps() ? "" : ", or more: it does not damp")
                        + "."));
    if (!pulsation.runs().isEmpty()) {
      tableOf(
          pulsation.runs(),
          List.of(
              Column.text("run", Pulse::run),
              Column.of("least", Kind.VELOCITY, Pulse::leastMps),
              Column.of("greatest", Kind.VELOCITY, Pulse::greatestMps),
              Column.of("deposition velocity", Kind.VELOCITY, Pulse::limitMps),
              Column.of("longest time below it", Kind.TIME, Pulse::longestS),
              Column.maybe("time to settle", Kind.TIME, Pulse::settlingS)));
    }
    paragraph(
        "The flow in the line runs from "
            + show(Kind.NUMBER, pulsation.ripple().leastRatio())
            + " to "
            + show(Kind.NUMBER, pulsation.ripple().greatestRatio())
            + " of its mean within a stroke; the pressure peaks at "
            + show(Kind.PRESSURE, pulsation.peakPa())
            + ", "
            + show(Kind.HEAD, pulsation.accelerationM())
            + " of slurry for the pulse."
            + pulsation
                .relief()
                .map(
                    r ->
                        " Set the relief between "
                            + show(Kind.PRESSURE, r.leastPa())
                            + " and "
                            + show(Kind.PRESSURE, r.greatestPa())
                            + "; local codes come first. A water hammer is faster than a relief.")
                .orElse(
                    pulsation.weakestPa().isPresent()
                        ? " No relief setting was found that clears both the peak and the rating."
                        : " No pressure rating is known for the relief."));
  }
}
