package boltlore.report.xlsx;

/** A picture in the drawing part of a worksheet (ECMA-376 part 1, 20.5.2.25). */
final class PictureXml {

    private PictureXml() {}

    /**
     * @param number through the drawing part, from 1
     * @param relation of the drawing part to the image
     */
    static void append(StringBuilder xml, LaidPicture picture, int number, String relation) {
        String size = "cx=\"" + DrawingXml.units(picture.widthPoints()) + "\" cy=\""
                + DrawingXml.units(picture.heightPoints()) + "\"";
        xml.append("<xdr:oneCellAnchor><xdr:from><xdr:col>0</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>")
                .append(picture.row())
                .append("</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:ext ")
                .append(size)
                .append("/><xdr:pic><xdr:nvPicPr><xdr:cNvPr id=\"")
                .append(number + 1)
                .append("\" name=\"Picture ")
                .append(number)
                .append("\" descr=\"")
                .append(Xml.escaped(picture.drawing().says()))
                .append("\"/><xdr:cNvPicPr><a:picLocks noChangeAspect=\"1\"/></xdr:cNvPicPr></xdr:nvPicPr>")
                .append("<xdr:blipFill><a:blip xmlns:r=\"")
                .append("http://schemas.openxmlformats.org/officeDocument/2006/relationships\" r:embed=\"")
                .append(relation)
                .append(
                        "\"/><a:stretch><a:fillRect/></a:stretch></xdr:blipFill><xdr:spPr><a:xfrm><a:off x=\"0\" y=\"0\"/>")
                .append("<a:ext ")
                .append(size)
                .append("/></a:xfrm><a:prstGeom prst=\"rect\"><a:avLst/></a:prstGeom></xdr:spPr></xdr:pic>")
                .append("<xdr:clientData/></xdr:oneCellAnchor>");
    }
}
