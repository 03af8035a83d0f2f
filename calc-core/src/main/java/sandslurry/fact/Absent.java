package sandslurry.fact;

import java.util.List;
import java.util.Optional;

/** A tree without any text. */
enum Absent implements Tree {
  /** Nothing. */
  NOTHING,
  /** A group without fields, every one of which takes its default. */
  GROUP;

  @Override
  public boolean isThere() {
    return this == GROUP;
  }

  @Override
  public boolean isRefused() {
    return false;
  }

  @Override
  public boolean isGroup() {
    return this == GROUP;
  }

  @Override
  public boolean isList() {
    return false;
  }

  @Override
  public Optional<String> text() {
    return Optional.empty();
  }

  @Override
  public String shown() {
    return "";
  }

  @Override
  public Tree at(String name) {
    return NOTHING;
  }

  @Override
  public List<Tree> entries() {
    return List.of();
  }

  @Override
  public List<String> names() {
    return List.of();
  }
}
