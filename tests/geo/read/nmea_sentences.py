"""Random GGA and RMC sentences with the place and time that python3-nmea2 reads from them, a row each:
sentence, latitude, longitude, milliseconds of the day.   nmea_sentences.py SEED COUNT"""
import random
import sys

import pynmea2

random.seed(int(sys.argv[1]))
for number in range(int(sys.argv[2])):
    latitude = f"{random.randrange(90):02d}{random.uniform(0, 59.99999):08.5f}"
    longitude = f"{random.randrange(180):03d}{random.uniform(0, 59.99999):08.5f}"
    north, east = random.choice("NS"), random.choice("EW")
    hundredths = random.randrange(100)
    time = f"{random.randrange(24):02d}{random.randrange(60):02d}{random.randrange(60):02d}.{hundredths:02d}"
    talker = random.choice(["GP", "GN", "GL", "GA"])
    if number % 2:
        made = pynmea2.GGA(talker, "GGA", (time, latitude, north, longitude, east, "1", "09", "1.1", "12", "M", "3", "M", "", ""))
    else:
        made = pynmea2.RMC(talker, "RMC", (time, "A", latitude, north, longitude, east, "0.1", "12", "010326", "", "", "A"))
    read = pynmea2.parse(str(made), check=True)
    stamp = read.timestamp
    milliseconds = ((stamp.hour * 60 + stamp.minute) * 60 + stamp.second) * 1000 + round(stamp.microsecond / 1000)
    print(str(made), repr(read.latitude), repr(read.longitude), milliseconds)
