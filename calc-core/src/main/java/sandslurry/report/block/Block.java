package sandslurry.report.block;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import sandslurry.fact.finding.Severity;
import sandslurry.fact.step.Equation;

/** A piece of a report, as data: what is said, not how it is painted. */
public sealed interface Block {
  /**
   * Writes the block.
   *
   * @param writer writes every kind of block
   */
  void write(BlockWriter writer);

  /**
   * A heading.
   *
   * @param level 1 for a chapter, 2 for a part of one
   * @param text the heading
   */
  record Heading(int level, String text) implements Block {
    @Override
    public void write(BlockWriter writer) {
      writer.heading(this);
    }
  }

  /**
   * A paragraph.
   *
   * @param text running text
   */
  record Paragraph(String text) implements Block {
    @Override
    public void write(BlockWriter writer) {
      writer.paragraph(this);
    }
  }

  /**
   * The verdict of a design, large.
   *
   * @param title the design
   * @param severity the verdict
   */
  record Verdict(String title, Severity severity) implements Block {
    @Override
    public void write(BlockWriter writer) {
      writer.verdict(this);
    }
  }

  /**
   * A card: a sentence that stands out, with a mark before it and more below it.
   *
   * @param mark a word such as FAIL
   * @param lines the sentences, the first beside the mark
   */
  record Marked(String mark, List<String> lines) implements Block {
    /** Copies the list. */
    public Marked {
      lines = List.copyOf(lines);
    }

    @Override
    public void write(BlockWriter writer) {
      writer.marked(this);
    }
  }

  /**
   * A step of the working.
   *
   * @param equation what it is computed by
   * @param source where the equation comes from
   * @param values what was put in; empty when nothing was
   * @param result what came of it
   */
  record Computed(Equation equation, String source, String values, String result) implements Block {
    /** What it is, in words. */
    String meaning() {
      return equation.meaning() + " (" + source + ")";
    }

    /** The values put in, with the word before them. */
    String with() {
      return values.isEmpty() ? "" : " with " + values;
    }

    @Override
    public void write(BlockWriter writer) {
      writer.computed(this);
    }
  }

  /**
   * A list.
   *
   * @param items its items, a sentence or two each
   * @param style how it looks
   */
  record Items(List<String> items, Style style) implements Block {
    /** How a list looks. */
    public enum Style {
      /** In the order given, with a mark each. */
      BULLETS,
      /** Numbered, since their order matters. */
      NUMBERS,
      /** In small print, to look something up in. */
      SMALL_PRINT
    }

    /** Copies the list. */
    public Items {
      items = List.copyOf(items);
    }

    /**
     * A list with a mark each.
     *
     * @param items its items
     * @return the list
     */
    public static Items bullets(List<String> items) {
      return new Items(items, Style.BULLETS);
    }

    /**
     * A numbered list.
     *
     * @param items its items
     * @return the list
     */
    public static Items numbered(List<String> items) {
      return new Items(items, Style.NUMBERS);
    }

    @Override
    public void write(BlockWriter writer) {
      writer.items(this);
    }
  }

  /**
   * A table.
   *
   * @param head the headings, with units
   * @param rows the cells, as many to a row as there are headings
   */
  record Table(List<String> head, List<List<String>> rows) implements Block {
    /** Copies the lists and checks that the table is square. */
    public Table {
      head = List.copyOf(head);
      List<List<String>> copies = new ArrayList<>();
      for (List<String> row : rows) {
        if (row.size() != head.size()) {
          throw new IllegalArgumentException(
              "a row of " + row.size() + " cells under " + head.size() + " headings");
        }
        copies.add(List.copyOf(row));
      }
      rows = List.copyOf(copies);
    }

    @Override
    public void write(BlockWriter writer) {
      writer.table(this);
    }
  }

  /**
   * The operating window of a line on a scale of flow rates.
   *
   * @param unit the unit of all numbers
   * @param stretches the flow rates at which the line works, ascending: the interval that holds the
   *     design flow rate and the nearest other
   * @param empty why there are none; empty when there are some
   * @param judged the flow rates judged, ascending
   */
  record Window(String unit, List<Stretch> stretches, String empty, List<Mark> judged)
      implements Block {
    /** Copies the lists. */
    public Window {
      stretches = List.copyOf(stretches);
      judged = List.copyOf(judged);
    }

    @Override
    public void write(BlockWriter writer) {
      writer.window(this);
    }

    /**
     * The window below a sentence.
     *
     * @param sentence what stands above it
     * @return the window, without the reason why there is none where the sentence gives it
     */
    public Window saidIn(String sentence) {
      return sentence.contains(empty) ? new Window(unit, stretches, "", judged) : this;
    }

    /**
     * The window in short.
     *
     * @return for example "16.0 to 22.5 L/s"
     */
    public String text() {
      return stretches.isEmpty()
          ? "none"
          : stretches.stream().map(Stretch::text).collect(Collectors.joining(", ")) + " " + unit;
    }

    /**
     * What sets the ends of the window.
     *
     * @return a sentence for each end, or why there is no window
     */
    public String ends() {
      return WindowText.ends(this);
    }

    /**
     * The places on the scale in ascending order.
     *
     * @return the ends of the window and the flow rates judged
     */
    public List<Place> places() {
      return WindowText.places(this);
    }

    /**
     * A place on the scale.
     *
     * @param number its flow rate
     * @param word what it is
     * @param works whether the line works from here to the next place
     */
    public record Place(String number, String word, boolean works) {}

    /**
     * Flow rates without a gap.
     *
     * @param lowest the lowest flow rate; empty when there is none
     * @param below what happens below it
     * @param highest the highest flow rate; empty when nothing known limits it
     * @param above what limits it
     */
    public record Stretch(
        OptionalDouble lowest, String below, OptionalDouble highest, String above) {
      /**
       * The lowest flow rate as it is shown: rounded up, so that it is safe.
       *
       * @return the number
       */
      public String lowestText() {
        return WindowText.number(lowest.orElseThrow(), true);
      }

      /**
       * The highest flow rate as it is shown: rounded down, so that it is safe.
       *
       * @return the number
       */
      public String highestText() {
        return WindowText.number(highest.orElseThrow(), false);
      }

      private String text() {
        String from = lowest.isPresent() ? "from " + lowestText() : "";
        return highest.isEmpty()
            ? lowest.isPresent() ? from : "any"
            : lowest.isPresent() ? lowestText() + " to " + highestText() : "to " + highestText();
      }

      /** Whether flow rates between two lie inside. */
      boolean holds(double from, double to) {
        return from >= lowest.orElse(0) - 1e-9
            && to <= highest.orElse(Double.POSITIVE_INFINITY) + 1e-9;
      }
    }

    /**
     * A flow rate judged.
     *
     * @param flow the flow rate, in the unit of the window
     * @param text the flow rate as it is shown
     * @param word what it is, such as "minimum"
     */
    public record Mark(double flow, String text, String word) {}
  }

  /**
   * A chart or drawing that whoever writes the report can draw.
   *
   * @param id which
   * @param caption what it shows
   * @param wide whether it takes the width of the page; others stand two in a row
   */
  record Picture(String id, String caption, boolean wide) implements Block {
    @Override
    public void write(BlockWriter writer) {
      writer.picture(this);
    }
  }

  /**
   * Room to be filled in by hand, such as a signature.
   *
   * @param statement what it stands for
   * @param labels what goes there, a field each
   */
  record Room(String statement, List<String> labels) implements Block {
    /** Copies the list. */
    public Room {
      labels = List.copyOf(labels);
    }

    @Override
    public void write(BlockWriter writer) {
      writer.room(this);
    }
  }
}
