// Files and names that would have a careless reader ask a network: a listening socket on the loopback shows that none
// is asked.
#include <gtest/gtest.h>
#include <sqlite3.h>

#include "geo/read/field_reader.h"
#include "geo/write/ground_layers.h"
#include "tests/geo/example_field.h"
#include "tests/geo/temporary_folder.h"
#include "tests/hostile/listener.h"

namespace plugside {
namespace {

using namespace testing_support;

TEST(NoRequest, is_made_for_a_virtual_file_under_any_name) {
    Listener listener;
    const TemporaryFolder folder;
    const std::string remote = "/vsicurl/" + listener.url() + "/evil.tif";
    const std::string raster =
        "<VRTDataset rasterXSize=\"1\" rasterYSize=\"1\"><VRTRasterBand dataType=\"Byte\" "
        "band=\"1\"><SimpleSource><SourceFilename relativeToVRT=\"0\">" +
        remote + "</SourceFilename><SourceBand>1</SourceBand></SimpleSource></VRTRasterBand></VRTDataset>";
    const std::string vector = "<OGRVRTDataSource><OGRVRTLayer name=\"field_boundaries\"><SrcDataSource>" + remote +
                               "</SrcDataSource></OGRVRTLayer></OGRVRTDataSource>";
    const std::string tiles =
        "<GDAL_WMS><Service name=\"TMS\"><ServerUrl>" + listener.url() + "/${z}</ServerUrl></Service></GDAL_WMS>";
    for (const std::string& content : {raster, vector, tiles})
        for (const char* name : {"evil.gpx", "evil.gpkg", "evil.geojson", "evil.vrt", "evil.xml"}) {
            const auto field = read_field({folder.file(name, content)});
            ASSERT_FALSE(field.has_value()) << name;
            EXPECT_EQ(field.error().code, Refusal::Code::wrong_format) << sentence(field.error());
            EXPECT_EQ(listener.connections(), 0) << name;
        }
    EXPECT_TRUE(listener.notices_a_connection());
}

TEST(NoRequest, is_made_for_a_name_that_leads_to_a_network_or_into_another_file) {
    Listener listener;
    for (const std::string& name :
         {listener.url() + "/walk.gpx", "/vsicurl/" + listener.url() + "/walk.gpx",
          "/vsicurl_streaming/" + listener.url() + "/walk.gpx", "/vsizip/" + listener.url() + "/a.zip/walk.gpx",
          std::string("/vsizip/walk.zip"), std::string("/vsistdin/"), std::string("/vsimem/walk.gpx"),
          "/./vsicurl/" + listener.url(), "//vsicurl/" + listener.url(), std::string("<VRTDataset/>"),
          "GPKG:" + listener.url(), "gpx/<" + listener.url(), std::string("s3://bucket/walk.gpx")}) {
        const auto field = read_field({name});
        ASSERT_FALSE(field.has_value()) << name;
        EXPECT_EQ(field.error().code, Refusal::Code::forbidden_source) << sentence(field.error());
        EXPECT_EQ(field.error().file, std::filesystem::path(name).string());
        EXPECT_EQ(listener.connections(), 0) << name;
    }
    for (const char* name : {"GPKG:walk.gpkg", "GeoJSON:walk", "PG:dbname=x", "WFS:x"})
        EXPECT_FALSE(read_field({name}).has_value()) << name;
    EXPECT_TRUE(listener.notices_a_connection());
}

TEST(NoRequest, is_made_for_an_external_entity_or_schema) {
    Listener listener;
    const TemporaryFolder folder;
    for (const std::string& content :
         {"<!DOCTYPE gpx SYSTEM \"" + listener.url() + "/gpx.dtd\"><gpx version=\"1.1\"/>",
          "<!DOCTYPE gpx [<!ENTITY x SYSTEM \"" + listener.url() +
              "/x\">]><gpx version=\"1.1\"><wpt lat=\"1\" lon=\"1\"><name>&x;</name></wpt></gpx>",
          "<!DOCTYPE gpx [<!ENTITY % x SYSTEM \"" + listener.url() + "/x\">%x;]><gpx version=\"1.1\"/>"}) {
        EXPECT_FALSE(read_field({folder.file("evil.gpx", content)}).has_value());
        EXPECT_EQ(listener.connections(), 0);
    }
    const std::string schema =
        "<gpx version=\"1.1\" xmlns=\"http://www.topografix.com/GPX/1/1\" "
        "xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\" "
        "xsi:schemaLocation=\"http://www.topografix.com/GPX/1/1 " +
        listener.url() + "/gpx.xsd\"><wpt lat=\"1\" lon=\"1\"/></gpx>";
    EXPECT_TRUE(read_field({folder.file("schema.gpx", schema)}).has_value());
    EXPECT_EQ(listener.connections(), 0);
    EXPECT_TRUE(listener.notices_a_connection());
}

TEST(NoRequest, is_made_for_a_reference_system_that_is_said_to_lie_elsewhere) {
    Listener listener;
    const TemporaryFolder folder;
    const std::string line =
        "\"features\":[{\"type\":\"Feature\",\"properties\":{},\"geometry\":{\"type\":\"LineString\",\"coordinates\":[[10,"
        "50],[10.001,50]]}}]}";
    for (const std::string& crs :
         {"{\"type\":\"name\",\"properties\":{\"name\":\"" + listener.url() + "/crs\"}}",
          "{\"type\":\"link\",\"properties\":{\"href\":\"" + listener.url() + "/crs\",\"type\":\"proj4\"}}",
          "{\"type\":\"url\",\"properties\":{\"url\":\"" + listener.url() + "/crs\"}}"}) {
        const auto field =
            read_field({folder.file("crs.geojson", "{\"type\":\"FeatureCollection\",\"crs\":" + crs + "," + line)});
        EXPECT_FALSE(field.has_value()) << crs;  // where it lies is not known: it must not be taken for WGS 84
        EXPECT_EQ(listener.connections(), 0) << crs;
    }
    const FieldSurvey field = example_field();
    ASSERT_EQ(refusal_of(write_ground(field.survey.ground, field.frame, folder / "crs.gpkg")), "");
    sqlite3* db = nullptr;
    ASSERT_EQ(sqlite3_open((folder / "crs.gpkg").c_str(), &db), SQLITE_OK);
    const std::string sql =
        "UPDATE gpkg_spatial_ref_sys SET organization='NONE', organization_coordsys_id=4326, definition='" + listener.url() +
        "/crs' WHERE srs_id=4326";
    ASSERT_EQ(sqlite3_exec(db, sql.c_str(), nullptr, nullptr, nullptr), SQLITE_OK);
    sqlite3_close(db);
    EXPECT_FALSE(read_field({folder / "crs.gpkg"}).has_value());
    EXPECT_EQ(listener.connections(), 0);
    EXPECT_TRUE(listener.notices_a_connection());
}

TEST(NoRequest, is_made_for_links_and_styles_of_a_kml_file) {
    Listener listener;
    const TemporaryFolder folder;
    const std::string place = "<Point><coordinates>-120.5,38.25</coordinates></Point>";
    for (const std::string& inside :
         {"<NetworkLink><Link><href>" + listener.url() + "/more.kml</href></Link></NetworkLink>",
          "<Placemark><styleUrl>" + listener.url() + "/styles.kml#s</styleUrl>" + place + "</Placemark>",
          "<Placemark><description><![CDATA[<img src=\"" + listener.url() + "/a.png\"/>]]></description>" + place +
              "</Placemark>",
          "<Schema name=\"s\"/><Placemark><ExtendedData><SchemaData schemaUrl=\"" + listener.url() +
              "/s.kml#s\"/></ExtendedData>" + place + "</Placemark>",
          "<GroundOverlay><Icon><href>" + listener.url() + "/a.png</href></Icon></GroundOverlay>"}) {
        static_cast<void>(read_field({folder.file(
            "links.kml", "<kml xmlns=\"http://www.opengis.net/kml/2.2\"><Document>" + inside + "</Document></kml>")}));
        EXPECT_EQ(listener.connections(), 0) << inside;
    }
    static_cast<void>(
        read_field({folder.file("links.gpx", "<gpx version=\"1.1\"><wpt lat=\"38\" lon=\"-120\"><link href=\"" +
                                                 listener.url() + "/IMG_1.jpg\"/></wpt></gpx>")}));
    EXPECT_EQ(listener.connections(), 0);
    EXPECT_TRUE(listener.notices_a_connection());
}

}  // namespace
}  // namespace plugside
