package sandslurry.ui;

import java.awt.BorderLayout;
import java.awt.Component;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.DefaultComboBoxModel;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.SwingWorker;
import net.miginfocom.swing.MigLayout;
import sandslurry.assessment.Evaluation;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.Problem;
import sandslurry.design.document.Reading;
import sandslurry.pipe.catalogue.PipeCatalogue;
import sandslurry.pipe.catalogue.PipeSystem;
import sandslurry.report.section.SizingSection;
import sandslurry.study.Sizing;
import sandslurry.study.UnitSizing;
import sandslurry.units.UnitSystem;

/**
 * Which standard pipes the line fits into with the duty of its pump, and which size a unit needs:
 * sized when asked for, off the event thread. The runs of the design need no pipe.
 */
final class SizeView {
  private static final String EVERY = "all standards";
  private static final String HOW =
      "Lays the line in every standard pipe, evaluates each as a whole and ranks those in which"
          + " nothing fails. Runs without pipe and bore are sized; when every run has one, all that"
          + " lie in a standard pipe; when none does, all runs.";

  private static final String NONE_AT_THESE =
      "With \"Flow rates of each pipe's own\" it shows from which flow rate each pipe would carry"
          + " the sand.";

  private final JPanel panel = new JPanel(new BorderLayout());
  private final JComboBox<String> system = new JComboBox<>();
  private final JCheckBox ownFlow = new JCheckBox("Flow rates of each pipe's own");
  private final JButton size = new JButton("Size the line");
  private final JComboBox<String> unit = new JComboBox<>();
  private final JComboBox<UnitSizing.Aim> aim = new JComboBox<>(UnitSizing.Aim.values());
  private final JTextField wanted = new JTextField("90 %", 8);
  private final JLabel unitLabel = Look.label("Unit", unit);
  private final JButton sizeUnit = new JButton("Size the unit");
  private final HtmlView page = new HtmlView("sizing", "Sizing");
  private DesignDocument document = DesignDocument.empty();
  private Work work;

  SizeView() {
    system.setModel(
        new DefaultComboBoxModel<>(
            Stream.concat(Stream.of(EVERY), PipeCatalogue.systems().stream())
                .toArray(String[]::new)));
    Look.named(system, "sizing system", "Pipe standard to choose from");
    Look.named(ownFlow, "sizing own flow", "Flow rates of each pipe's own");
    Look.named(size, "size the line", "Size the line");
    ownFlow.setToolTipText(
        "From the lowest flow rate that carries the sand in it; else those of the design");
    JPanel above = new JPanel(new MigLayout("insets 6 10 2 10, hidemode 3", "[]6lp[]16lp[]16lp[]"));
    above.add(Look.label("Pipe standard", system));
    above.add(system);
    above.add(ownFlow);
    above.add(size);
    addUnit(above);
    panel.add(above, BorderLayout.NORTH);
    panel.add(page.component(), BorderLayout.CENTER);
    size.addActionListener(event -> start(sizesLine(), "The line is being sized."));
    sizeUnit.addActionListener(event -> start(sizesUnit(), "The unit is being sized."));
  }

  private void addUnit(JPanel above) {
    Look.named(unit, "sizing unit", "Unit to size");
    Look.named(aim, "sizing aim", "What is wanted of it");
    Look.named(wanted, "sizing wanted", "How much is wanted");
    Look.named(sizeUnit, "size the unit", "Size the unit");
    wanted.setToolTipText("A share such as 90 %, or a time such as 30 d");
    aim.setRenderer(
        new DefaultListCellRenderer() {
          @Override
          public Component getListCellRendererComponent(
              JList<?> list, Object value, int index, boolean selected, boolean focused) {
            return super.getListCellRendererComponent(
                list, ((UnitSizing.Aim) value).words(), index, selected, focused);
          }
        });
    sizeUnit.setEnabled(false);
    above.add(unitLabel, "newline");
    above.add(unit);
    above.add(aim, "split 2");
    above.add(wanted);
    above.add(sizeUnit);
    showUnits();
  }

  /** A design without units to size has no row for them. */
  private void showUnits() {
    for (JComponent part : List.of(unitLabel, unit, aim, wanted, sizeUnit)) {
      part.setVisible(unit.getItemCount() > 0);
    }
  }

  JPanel component() {
    return panel;
  }

  /** Another design is shown: what was found of the one before belongs to it no more. */
  void show(DesignDocument shown) {
    if (!shown.equals(document)) {
      stop();
      document = shown;
      unit.setModel(new DefaultComboBoxModel<>(UnitSizing.units(document).toArray(String[]::new)));
      showUnits();
      enabled(true);
      page.show(FindingsPage.plain(HOW));
    }
  }

  private void stop() {
    if (work != null) {
      work.cancel(true);
      work = null;
    }
    enabled(true);
  }

  private void enabled(boolean free) {
    size.setEnabled(free);
    sizeUnit.setEnabled(free && unit.getItemCount() > 0);
  }

  private void start(Supplier<String> sizes, String meanwhile) {
    stop();
    enabled(false);
    page.show(FindingsPage.plain(meanwhile));
    work = new Work(sizes);
    work.execute();
  }

  private Set<PipeSystem> chosen() {
    return PipeCatalogue.findSystem((String) system.getSelectedItem())
        .map(EnumSet::of)
        .orElse(EnumSet.allOf(PipeSystem.class));
  }

  private static String html(Sizing sizing, UnitSystem units) {
    return sizing.problems().isEmpty()
        ? HtmlBlocks.of(SizingSection.of(sizing, units, Integer.MAX_VALUE), "")
        : FindingsPage.plain(
            sizing.problems().stream().map(Problem::toString).collect(Collectors.joining("; ")));
  }

  private Supplier<String> sizesLine() {
    DesignDocument design = document;
    Set<PipeSystem> systems = chosen();
    boolean own = ownFlow.isSelected();
    return () -> {
      Sizing sizing = own ? Sizing.withFlow(design, systems) : Sizing.of(design, systems);
      return (sizing.fits().isEmpty() && !own ? FindingsPage.plain(NONE_AT_THESE) : "")
          + sizing
              .nearest(design)
              .map(nearest -> HtmlBlocks.of(SizingSection.nearest(nearest), ""))
              .orElse("")
          + html(sizing, units(design));
    };
  }

  private Supplier<String> sizesUnit() {
    DesignDocument design = document;
    String name = (String) unit.getSelectedItem();
    UnitSizing.Aim what = (UnitSizing.Aim) aim.getSelectedItem();
    String text = wanted.getText();
    return () -> {
      Reading reading = design.read();
      if (reading.design().isEmpty()) {
        return FindingsPage.plain(
            reading.problems().stream().map(Problem::toString).collect(Collectors.joining("; ")));
      }
      double si;
      try {
        si = what.parse(text);
      } catch (IllegalArgumentException e) {
        return FindingsPage.plain(e.getMessage());
      }
      return HtmlBlocks.of(
          SizingSection.unit(
              UnitSizing.of(design, Evaluation.assess(reading.design().get()), name, what, si),
              units(design)),
          "");
    };
  }

  private static UnitSystem units(DesignDocument design) {
    return design.text("/units").equals("US") ? UnitSystem.US : UnitSystem.METRIC;
  }

  /** One sizing. */
  private final class Work extends SwingWorker<String, Void> {
    private final Supplier<String> sizes;

    Work(Supplier<String> sizes) {
      this.sizes = sizes;
    }

    @Override
    protected String doInBackground() {
      return sizes.get();
    }

    @Override
    protected void done() {
      if (work != this) {
        return;
      }
      work = null;
      enabled(true);
      try {
        page.show(get());
      } catch (CancellationException stopped) {
        page.show(FindingsPage.plain(HOW));
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      } catch (ExecutionException e) {
        page.show(FindingsPage.plain("It could not be sized: " + e.getCause()));
      }
    }
  }
}
