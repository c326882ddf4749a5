"""The 20 GeodTest rows that come with GeographicLib's Python package (Karney, Algorithms for geodesics, J. Geodesy 87, 2013),
and for each a short line that a field can hold, computed by that package: one row a line,
longitude and latitude of the start, azimuth, distance in metres, longitude and latitude of its end, and the row's own
second place and distance."""

from geographiclib.geodesic import Geodesic
from geographiclib.test.test_geodesic import GeodesicTest

for row, (lat1, lon1, azi1, lat2, lon2, azi2, s12, *rest) in enumerate(GeodesicTest.testcases):
    metres = 250.0 * (1 + row)
    end = Geodesic.WGS84.Direct(lat1, lon1, azi1, metres)
    print(*(repr(v) for v in (lon1, lat1, azi1, metres, end["lon2"], end["lat2"], lon2, lat2, s12)))
