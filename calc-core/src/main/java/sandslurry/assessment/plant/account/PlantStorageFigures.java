package sandslurry.assessment.plant.account;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import sandslurry.assessment.plant.PlantMeanDay;
import sandslurry.assessment.plant.PlantTotals;
import sandslurry.assessment.plant.Spread;
import sandslurry.plant.Figure;
import sandslurry.plant.Range;
import sandslurry.plant.account.StorageAccount;
import sandslurry.plant.unit.StorageUnit;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/** The figures of a storage of a plant. */
final class PlantStorageFigures {
  private PlantStorageFigures() {}

  static List<Figure> of(
      StorageUnit storage, Spread<PlantMeanDay> days, OptionalDouble daysWanted) {
    StorageAccount account = days.base().storage(storage);
    List<Figure> figures = new ArrayList<>();
    figures.add(new Figure("volume to the top", Kind.VOLUME, Range.of(storage.pond().volumeM3())));
    figures.add(new Figure("freeboard", Kind.VOLUME, Range.of(account.freeboardVolumeM3())));
    figures.add(new Figure("design storm", Kind.VOLUME, Range.of(account.stormVolumeM3())));
    figures.add(new Figure("sand there now", Kind.VOLUME, Range.of(account.settledSandM3())));
    figures.add(new Figure("room for liquid", Kind.VOLUME, Range.of(account.roomM3())));
    for (int i = 0; i < account.months().size(); i++) {
      int month = i;
      figures.add(
          days.figure(
              "net inflow, " + account.months().get(i).name() + ", at the working level",
              Kind.VOLUME,
              m -> m.storage(storage).netInflowM3(month)));
    }
    days.figureIfAny(
            "days of storage from the worst month on",
            Kind.DAYS,
            m -> seconds(m.storage(storage).daysOfStorage()))
        .ifPresent(figures::add);
    figures.add(
        days.figure(
            "sand that settles in a year, in bulk",
            Kind.VOLUME,
            m -> m.storage(storage).sandPerYearM3()));
    figures.add(
        days.figure(
            "rise of the sand in a year", Kind.DEPTH, m -> m.storage(storage).sandRisePerYearM()));
    days.figureIfAny(
            "years until sand takes a tenth of the volume, 50 for more",
            Kind.YEARS,
            m -> fifty(m.storage(storage).yearsToTenth()))
        .ifPresent(figures::add);
    if (daysWanted.isPresent()) {
      double wanted = daysWanted.getAsDouble();
      figures.add(
          days.figure(
              "room that the days wanted ask for",
              Kind.VOLUME,
              m -> m.storage(storage).roomNeededM3(wanted)));
      days.figureIfAny(
              "years until sand leaves less than the days wanted below storm and freeboard,"
                  + " 50 for more",
              Kind.YEARS,
              m -> fifty(m.storage(storage).yearsUntilShortOf(wanted)))
          .ifPresent(figures::add);
    }
    return figures;
  }

  /** Nobody plans further than that. */
  private static OptionalDouble fifty(OptionalDouble years) {
    return years.isPresent()
        ? OptionalDouble.of(Math.min(years.getAsDouble(), PlantTotals.MANY_YEARS))
        : years;
  }

  private static OptionalDouble seconds(OptionalDouble days) {
    return days.isPresent()
        ? OptionalDouble.of(InUnit.DAY.si(days.getAsDouble()))
        : OptionalDouble.empty();
  }
}
