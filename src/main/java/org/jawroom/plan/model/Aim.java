package org.jawroom.plan.model;

/** The objectives of a plan; {@link #toString} returns the wording of the reports. */
public enum Aim {
  HELD("the most pieces held"),
  COST("the least money spent"),
  THINGS("the fewest things bought"),
  EQUIPPED("the most machines equipped"),
  GOOD("the most of them comfortable and settable"),
  OPENING("the widest openings in all"),
  JAW("the widest jaws in all"),
  CHANGES("the fewest changes"),
  SET_OUT("the most vises set out"),
  ORDER("the order of the tables"),
  REMEDY("the cheapest thing for each job not held");

  private final String words;

  Aim(String words) {
    this.words = words;
  }

  @Override
  public String toString() {
    return words;
  }
}
