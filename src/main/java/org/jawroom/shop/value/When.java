package org.jawroom.shop.value;

/** The situations in which a guard or a part counts. */
public enum When {
  CUTTING,
  LOADING,
  ALWAYS;

  public boolean countsWhileCutting() {
    return this != LOADING;
  }

  public boolean countsWhileLoading() {
    return this != CUTTING;
  }

  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
