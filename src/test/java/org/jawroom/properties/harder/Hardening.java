package org.jawroom.properties.harder;

/**
 * Two changes to copies of one shop, of which the second leaves it harder in every way that counts.
 *
 * @param easier makes the easier shop, {@code harder} the harder one
 */
record Hardening(String name, Step easier, Step harder) {

  /**
   * Changes a shop by a length that is whole nanometres; {@code pick} ≥ 0 chooses among its things.
   */
  @FunctionalInterface
  interface Step {
    Step NONE = (shop, by, pick) -> {};

    void change(ShopDraft shop, long by, int pick);
  }

  /** Made harder than it is. */
  static Hardening of(String name, Step harder) {
    return new Hardening(name, Step.NONE, harder);
  }

  /** Prepared, so that one thing alone can count, and then made harder. */
  static Hardening prepared(String name, Step prepare, Step harder) {
    return new Hardening(
        name,
        prepare,
        (shop, by, pick) -> {
          prepare.change(shop, by, pick);
          harder.change(shop, by, pick);
        });
  }

  /** Made easier than it is. */
  static Hardening relieved(String name, Step easier) {
    return new Hardening(name, easier, Step.NONE);
  }

  @Override
  public String toString() {
    return name;
  }
}
