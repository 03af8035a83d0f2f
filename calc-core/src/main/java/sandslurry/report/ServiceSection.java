package sandslurry.report;

import java.util.ArrayList;
import java.util.List;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.ServiceResult;
import sandslurry.design.Design;
import sandslurry.units.UnitSystem;

/** What the report says of a line in service beside its design state, chapter by chapter. */
final class ServiceSection {
  private ServiceSection() {}

  static List<Block> of(Assessment assessment) {
    Design design = assessment.design();
    UnitSystem units = design.units();
    ServiceResult result = assessment.service();
    List<Block> blocks = new ArrayList<>(StatesSection.of(units, result));
    blocks.addAll(PumpsInStatesSection.of(design, result));
    result.pulsation().ifPresent(p -> blocks.addAll(PulsationSection.of(units, p)));
    blocks.addAll(SurgeSection.of(units, result.surges()));
    result
        .stop()
        .ifPresent(s -> blocks.addAll(StopSection.of(units, s, design.pump().isPresent())));
    blocks.addAll(DaySection.of(units, result.days()));
    blocks.addAll(FeedSection.of(units, result));
    return blocks;
  }
}
