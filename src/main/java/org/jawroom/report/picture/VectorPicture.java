package org.jawroom.report.picture;

import java.io.IOException;
import java.io.OutputStream;
import javax.xml.namespace.QName;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackagePartName;
import org.apache.poi.openxml4j.opc.PackageRelationship;
import org.apache.poi.openxml4j.opc.PackagingURIHelper;
import org.apache.poi.openxml4j.opc.TargetMode;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFRelation;
import org.apache.xmlbeans.XmlCursor;
import org.openxmlformats.schemas.drawingml.x2006.main.CTBlip;
import org.openxmlformats.schemas.drawingml.x2006.main.CTOfficeArtExtension;

/**
 * Adds a vector picture beside the bitmap of a sheet, for programs that can show it; the workbook
 * library cannot write one. The markup is the SVG extension to Office Open XML drawings
 * ([MS-ODRAWXML] 2.3.3, svgBlip).
 */
public final class VectorPicture {
  private static final String EXTENSION = "{96DAC541-7B7A-43D3-8B79-37D633B846F1}";
  private static final String NAMESPACE =
      "http://schemas.microsoft.com/office/drawing/2016/SVG/main";
  private static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

  private VectorPicture() {}

  public static void add(XSSFPicture bitmap, byte[] svg) throws IOException {
    PackagePart drawing = bitmap.getDrawing().getPackagePart();
    CTBlip blip = bitmap.getCTPicture().getBlipFill().getBlip();
    CTOfficeArtExtension extension = blip.addNewExtLst().addNewExt();
    extension.setUri(EXTENSION);
    try (XmlCursor cursor = extension.newCursor()) {
      cursor.toEndToken();
      cursor.beginElement(new QName(NAMESPACE, "svgBlip", "asvg"));
      cursor.insertAttributeWithValue(new QName(RELATIONS, "embed", "r"), relation(drawing, svg));
    }
  }

  private static String relation(PackagePart drawing, byte[] svg) throws IOException {
    try {
      OPCPackage file = drawing.getPackage();
      PackagePartName name =
          PackagingURIHelper.createPartName(
              "/xl/media/vector" + file.getUnusedPartIndex("/xl/media/vector#.svg") + ".svg");
      PackagePart part = file.createPart(name, "image/svg+xml");
      try (OutputStream out = part.getOutputStream()) {
        out.write(svg);
      }
      PackageRelationship relation =
          drawing.addRelationship(name, TargetMode.INTERNAL, XSSFRelation.IMAGES.getRelation());
      return relation.getId();
    } catch (InvalidFormatException ours) {
      throw new IllegalStateException(ours);
    }
  }
}
