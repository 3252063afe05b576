package org.jawroom;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.properties.HasName;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Map;

/** The plan of the house: dependencies point one way, and libraries stay at the edge. */
@AnalyzeClasses(packages = "org.jawroom", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest
  static final ArchRule layers_pointOneWay =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .layer("geometry")
          .definedBy("org.jawroom.geometry..")
          .layer("standards")
          .definedBy("org.jawroom.standards..")
          .layer("shop")
          .definedBy("org.jawroom.shop..")
          .layer("tables")
          .definedBy("org.jawroom.tables..")
          .layer("clearance")
          .definedBy("org.jawroom.clearance..")
          .layer("placement")
          .definedBy("org.jawroom.placement..")
          .layer("plausibility")
          .definedBy("org.jawroom.plausibility..")
          .layer("advice")
          .definedBy("org.jawroom.advice..")
          .layer("checks")
          .definedBy("org.jawroom.checks..")
          .layer("drawing")
          .definedBy("org.jawroom.drawing..")
          .layer("plan")
          .definedBy("org.jawroom.plan..")
          .layer("cell")
          .definedBy("org.jawroom.cell..")
          .layer("report")
          .definedBy("org.jawroom.report..")
          .layer("publish")
          .definedBy("org.jawroom.publish..")
          .layer("app")
          .definedBy("org.jawroom.app..")
          .layer("cli")
          .definedBy("org.jawroom.cli..")
          .layer("launch")
          .definedBy("org.jawroom.launch..")
          .whereLayer("launch")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("cli")
          .mayOnlyBeAccessedByLayers("launch")
          .whereLayer("app")
          .mayOnlyBeAccessedByLayers("cli", "launch")
          .whereLayer("publish")
          .mayOnlyBeAccessedByLayers("report", "app", "cli", "launch")
          .whereLayer("report")
          .mayOnlyBeAccessedByLayers("app", "cli", "launch")
          .whereLayer("cell")
          .mayOnlyBeAccessedByLayers("report", "app", "cli")
          .whereLayer("plan")
          .mayOnlyBeAccessedByLayers("cell", "report", "app", "cli")
          .whereLayer("checks")
          .mayOnlyBeAccessedByLayers("report", "app", "cli")
          .whereLayer("drawing")
          .mayOnlyBeAccessedByLayers("report", "app", "cli")
          .whereLayer("tables")
          .mayOnlyBeAccessedByLayers("app", "cli", "launch")
          .whereLayer("plausibility")
          .mayOnlyBeAccessedByLayers("app", "cli")
          .whereLayer("advice")
          .mayOnlyBeAccessedByLayers("drawing", "cell", "report", "app", "cli")
          .whereLayer("placement")
          .mayOnlyBeAccessedByLayers(
              "plausibility", "advice", "checks", "drawing", "cell", "report", "app", "cli")
          .whereLayer("clearance")
          .mayOnlyBeAccessedByLayers(
              "placement", "plausibility", "advice", "checks", "drawing", "cell", "report");

  @ArchTest
  static final ArchRule solver_usesNothingButTheLanguage =
      classes()
          .that(
              resideInAnyPackage(
                  "org.jawroom.geometry..",
                  "org.jawroom.shop..",
                  "org.jawroom.clearance..",
                  "org.jawroom.placement..",
                  "org.jawroom.checks..",
                  "org.jawroom.advice.."))
          .should()
          .onlyDependOnClassesThat(
              resideInAnyPackage(
                  "java.lang..",
                  "java.util",
                  "java.util.function",
                  "java.util.stream",
                  "java.math",
                  "org.jawroom.geometry..",
                  "org.jawroom.standards..",
                  "org.jawroom.shop..",
                  "org.jawroom.clearance..",
                  "org.jawroom.placement..",
                  "org.jawroom.checks..",
                  "org.jawroom.advice.."));

  @ArchTest
  static final ArchRule geometry_knowsNothingElse =
      classes()
          .that(resideInAPackage("org.jawroom.geometry.."))
          .should()
          .onlyDependOnClassesThat(
              resideInAnyPackage(
                  "java.lang..",
                  "java.util",
                  "java.util.function",
                  "java.math",
                  "org.jawroom.geometry.."));

  @ArchTest
  static final ArchRule standards_knowGeometryOnly =
      classes()
          .that(resideInAPackage("org.jawroom.standards.."))
          .should()
          .onlyDependOnClassesThat(
              resideInAnyPackage(
                  "java.lang..",
                  "java.util",
                  "java.util.function",
                  "java.util.stream",
                  "org.jawroom.geometry..",
                  "org.jawroom.standards.."));

  @ArchTest
  static final ArchRule shop_knowsGeometryOnly =
      classes()
          .that(resideInAPackage("org.jawroom.shop.."))
          .should()
          .onlyDependOnClassesThat(
              resideInAnyPackage(
                  "java.lang..",
                  "java.util",
                  "java.util.function",
                  "java.util.stream",
                  "java.math",
                  "org.jawroom.geometry..",
                  "org.jawroom.shop.."));

  @ArchTest
  static final ArchRule solver_looksAtNoClock =
      noClasses()
          .that(
              resideInAnyPackage(
                  "org.jawroom.geometry..",
                  "org.jawroom.shop..",
                  "org.jawroom.clearance..",
                  "org.jawroom.placement..",
                  "org.jawroom.advice..",
                  "org.jawroom.cell.."))
          .should()
          .callMethod(System.class, "nanoTime")
          .orShould()
          .callMethod(System.class, "currentTimeMillis");

  @ArchTest
  static final ArchRule cell_usesNothingButTheLanguage =
      classes()
          .that(resideInAPackage("org.jawroom.cell.."))
          .should()
          .onlyDependOnClassesThat(
              resideInAnyPackage(
                  "java.lang..",
                  "java.util",
                  "java.util.function",
                  "java.util.stream",
                  "java.math",
                  "org.jawroom.geometry..",
                  "org.jawroom.shop..",
                  "org.jawroom.clearance..",
                  "org.jawroom.placement..",
                  "org.jawroom.advice..",
                  "org.jawroom.plan..",
                  "org.jawroom.cell.."));

  @ArchTest
  static final ArchRule plausibility_usesTheSolverAndTheLanguage =
      classes()
          .that(resideInAPackage("org.jawroom.plausibility.."))
          .should()
          .onlyDependOnClassesThat(
              resideInAnyPackage(
                  "java.lang..",
                  "java.util",
                  "java.util.function",
                  "java.util.stream",
                  "java.math",
                  "org.jawroom.geometry..",
                  "org.jawroom.standards..",
                  "org.jawroom.shop..",
                  "org.jawroom.clearance..",
                  "org.jawroom.placement..",
                  "org.jawroom.plausibility.."));

  @ArchTest
  static final ArchRule plan_knowsNumbersOnly =
      classes()
          .that(
              resideInAPackage("org.jawroom.plan..")
                  .and(
                      not(
                          HasName.Predicates.nameMatching(
                              "org.jawroom.plan.program.Complaints.*"))))
          .should()
          .onlyDependOnClassesThat(
              resideInAnyPackage(
                  "java.lang..",
                  "java.util",
                  "java.util.function",
                  "java.util.stream",
                  "java.math",
                  "org.jawroom.geometry..",
                  "org.jawroom.plan..",
                  "org.ojalgo.optimisation..",
                  "org.ojalgo.type.context.."));

  @ArchTest
  static final ArchRule ojalgo_staysBehindTheSolver =
      noClasses()
          .that(
              resideInAPackage("org.jawroom..")
                  .and(
                      not(
                          HasName.Predicates.nameMatching(
                              "org.jawroom.plan.program.(Solver|Complaints).*"))))
          .should()
          .dependOnClassesThat(resideInAPackage("org.ojalgo.."));

  @ArchTest
  static final ArchRule picocli_staysInCli =
      noClasses()
          .that(
              resideInAPackage("org.jawroom..")
                  .and(not(resideInAnyPackage("org.jawroom.cli..", "org.jawroom.launch.."))))
          .should()
          .dependOnClassesThat(resideInAPackage("picocli.."));

  @ArchTest
  static final ArchRule sheets_stayInTablesAndReport =
      noClasses()
          .that(
              resideInAPackage("org.jawroom..")
                  .and(not(resideInAnyPackage("org.jawroom.tables..", "org.jawroom.report.."))))
          .should()
          .dependOnClassesThat(resideInAnyPackage("org.apache.poi..", "org.apache.commons.csv.."));

  /** So that no other command loads it. */
  @ArchTest
  static final ArchRule tablesaw_staysInTheSurvey =
      noClasses()
          .that(
              resideInAPackage("org.jawroom..")
                  .and(not(resideInAPackage("org.jawroom.report.survey.count.."))))
          .should()
          .dependOnClassesThat(
              resideInAnyPackage(
                  "tech.tablesaw..", "it.unimi..", "org.roaringbitmap..", "com.google.."));

  @ArchTest
  static final ArchRule survey_isKnownByItsCommandAlone =
      noClasses()
          .that(
              resideInAPackage("org.jawroom..")
                  .and(not(resideInAPackage("org.jawroom.report.survey..")))
                  .and(
                      not(
                          HasName.Predicates.nameMatching(
                              "org.jawroom.cli.(command.SurveyCommand|option.WhereText).*"))))
          .should()
          .dependOnClassesThat(resideInAPackage("org.jawroom.report.survey.."));

  @ArchTest
  static final ArchRule pens_stayInDrawingAndReport =
      noClasses()
          .that(
              resideInAPackage("org.jawroom..")
                  .and(not(resideInAnyPackage("org.jawroom.drawing..", "org.jawroom.report.."))))
          .should()
          .dependOnClassesThat(
              resideInAnyPackage("org.jfree..", "org.apache.pdfbox..", "de.rototor.."));

  @ArchTest
  static final ArchRule publish_knowsNothingElse =
      noClasses()
          .that(resideInAPackage("org.jawroom.publish.."))
          .should()
          .dependOnClassesThat(
              resideInAPackage("org.jawroom..")
                  .and(not(resideInAPackage("org.jawroom.publish.."))));

  @ArchTest
  static final ArchRule packages_haveNoCycles =
      slices().matching("org.jawroom.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule subpackages_haveNoCycles =
      slices().matching("org.jawroom.(**)").should().beFreeOfCycles();

  @ArchTest
  static void names_ofClasses_occurOnce(JavaClasses all) {
    Map<String, List<String>> bearers =
        all.stream()
            .filter(one -> one.isTopLevelClass() && !one.getSimpleName().equals("package-info"))
            .collect(groupingBy(JavaClass::getSimpleName, mapping(JavaClass::getName, toList())));
    bearers.values().removeIf(same -> same.size() == 1);
    assertEquals(Map.of(), bearers);
  }
}
