package org.jawroom.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jawroom.geometry.Length;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.report.wording.Cautions;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Base;
import org.jawroom.shop.vise.Swivel;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

class PageFileTest {
  private static final int MOST = 3_000_000;

  @Test
  void html_madeTwice_isTheSameInAnyLocale() throws Exception {
    ShopPage page = ShopPage.example();
    String once = page.html();
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG"));
      assertEquals(once, page.html());
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void html_policy_namesTheOneScriptAndStyleAndNothingElse() throws Exception {
    String html = ShopPage.example().html();
    String policy = only("http-equiv=\"Content-Security-Policy\" content=\"([^\"]*)\"", html);
    assertEquals(
        "default-src 'none'; script-src '"
            + hash(only("<script>(.*?)</script>", html))
            + "'; style-src '"
            + hash(only("<style>(.*?)</style>", html))
            + "'; base-uri 'none'; form-action 'none'",
        policy);
  }

  @Test
  void html_ofTheDemo_fetchesNothingAndRunsNothingInline() throws Exception {
    String html = ShopPage.demo().html();
    // The one address names a language; it is never fetched.
    String without = html.replace("http://www.w3.org/2000/svg", "");
    assertFalse(without.contains("http:") || without.contains("https:"));
    assertFalse(
        Pattern.compile("<[^>]*\\s(on\\w+|src|href|style)\\s*=", Pattern.CASE_INSENSITIVE)
            .matcher(html.substring(0, html.indexOf("id=\"data\"")))
            .find());
    assertFalse(
        html.contains("innerHTML")
            || html.contains("insertAdjacentHTML")
            || html.contains("document.write")
            || html.contains("eval("));
    assertTrue(html.contains(Cautions.BRIEF));
  }

  @Test
  void html_ofTwentyMachinesAndFortyVises_isUnderThreeMegabytes() {
    List<Machine> machines = new ArrayList<>();
    List<Vise> vises = new ArrayList<>();
    Profile[] kinds = {Profile.PLAIN, Profile.INCH, Profile.SQUEEZED, Profile.TOLERANCES};
    for (long seed = 0; seed < 40; seed++) {
      Shop one = RandomShops.shop(kinds[(int) seed % kinds.length], seed);
      vises.addAll(one.vises());
      if (seed % 2 == 0) {
        machines.addAll(one.machines());
      }
    }
    ShopPage page = ShopPage.of(new Shop(Settings.DEFAULTS, machines, vises, List.of()));
    assertEquals(800, page.pairings().size());
    long drawn =
        page.outcomes().stream().filter(outcome -> outcome.recommended().isPresent()).count();
    assertTrue(drawn > 200, "too few drawn: " + drawn);
    int size = page.html().getBytes(StandardCharsets.UTF_8).length;
    assertTrue(size < MOST, "page of " + size + " bytes");
  }

  private static String only(String pattern, String html) {
    Matcher matcher = Pattern.compile(pattern, Pattern.DOTALL).matcher(html);
    assertTrue(matcher.find(), pattern);
    String found = matcher.group(1);
    assertFalse(matcher.find(), "more than one: " + pattern);
    return found;
  }

  private static String hash(String text) throws Exception {
    byte[] digest =
        MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    return "sha256-" + Base64.getEncoder().encodeToString(digest);
  }

  /** Turned on a swivel base, parts are strips; no value is supposed of what they cover. */
  @Test
  void html_ofATurnedVise_marksItsStripsAndFixesItsReadings() throws Exception {
    Shop shop = ShopPage.example().shop();
    Vise plain = shop.vises().get(0);
    Base base = plain.base();
    Vise open =
        plain.withBase(
            new Base(
                base.bedHeight(),
                Dimension.within(base.width().length() - 2, base.width().length()),
                base.rearReach(),
                base.frontReach()));
    Swivel swivel =
        new Swivel(plain.name(), BigDecimal.valueOf(30), 40 * Length.MM, OptionalLong.empty());
    String html = ShopPage.of(shop.withVises(List.of(open.turned(swivel)))).html();
    assertTrue(html.contains("\"outlines\":[[["));
    assertTrue(html.contains("\"strip\":0"));
    assertTrue(html.contains("\"turned\":true"));
    assertTrue(
        Pattern.compile("\"name\":\"base_width\",\"range\":[^}]*\"fixed\":true")
            .matcher(html)
            .find());
    assertFalse(html.contains("[\"base_width\","), "no end moves with it");
  }
}
