-- A shop's database as version 4 of the schema kept it: that of version 1, grown to it, and a third order of which one
-- sheet is ticked as cut, when nobody wrote down by whom. All data is invented.
BEGIN TRANSACTION;
CREATE TABLE arrivals (seq INTEGER PRIMARY KEY AUTOINCREMENT, order_id TEXT NOT NULL, revision INTEGER NOT NULL, hash TEXT NOT NULL, outcome TEXT NOT NULL, reasons TEXT NOT NULL, at TEXT NOT NULL, station TEXT NOT NULL, person TEXT NOT NULL);
INSERT INTO "arrivals" VALUES(1,'0b54c3f4-1a2b-4c3d-8e4f-000000000002',1,'41c4de5b5416054ba2842a8c6bd2bf05173aba07622a84b3ca67c0826b915ca9','taken','','2026-11-26T14:36:42Z','','');
CREATE TABLE current_orders (id TEXT PRIMARY KEY, revision INTEGER NOT NULL, job_name TEXT NOT NULL, customer TEXT NOT NULL, address TEXT NOT NULL, wanted_by TEXT NOT NULL, due TEXT NOT NULL, first_received_at TEXT NOT NULL DEFAULT '', priority INTEGER NOT NULL DEFAULT 0, held INTEGER NOT NULL DEFAULT 0, cancelled INTEGER NOT NULL DEFAULT 0, unfinished INTEGER NOT NULL DEFAULT 0);
INSERT INTO "current_orders" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001',2,'Alder House','Invented customer','','2026-12-10','2026-12-10','2026-11-26T03:46:42Z',0,0,0,2);
INSERT INTO "current_orders" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77',1,'Second house','Invented customer','','2026-03-01','2026-03-01','2026-11-26T03:46:44Z',0,0,0,2);
INSERT INTO "current_orders" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002',1,'Birch House','Invented customer','1inventedlane','2026-12-10','2026-12-10','2026-11-26T14:36:42Z',0,0,0,16);
CREATE TABLE cut_ticks (plan_id TEXT NOT NULL REFERENCES plans (id), pattern INTEGER NOT NULL, PRIMARY KEY (plan_id, pattern));
INSERT INTO "cut_ticks" VALUES('f6a12850-745a-44ba-908a-9b96e4af90be',0);
CREATE TABLE data_version (version INTEGER NOT NULL);
INSERT INTO "data_version" VALUES(5);
CREATE TABLE held_pieces (order_id TEXT NOT NULL, mark TEXT NOT NULL, PRIMARY KEY (order_id, mark));
CREATE TABLE loads (id TEXT PRIMARY KEY, made_at TEXT NOT NULL, document TEXT NOT NULL, truck TEXT NOT NULL DEFAULT '', bundles INTEGER NOT NULL DEFAULT 0, pieces INTEGER NOT NULL DEFAULT 0, kilograms DOUBLE PRECISION NOT NULL DEFAULT 0, longest_nm INTEGER NOT NULL DEFAULT 0);
INSERT INTO "loads" VALUES('60f6a235-0389-4353-b917-dbd07f62eefd','2026-11-26T03:46:48Z','{
  "format": "lapwright/load",
  "version": 1,
  "program": "0.1.0",
  "bundles": [
    {
      "area": "Ridge",
      "job": "Second house",
      "kilograms": 9.243,
      "label": "B1",
      "material": {"colour": "Slate", "gauge": "24 ga", "metal": "galvanised-steel"},
      "order": "9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77",
      "pieces": [{"count": 1, "length_mm": 3200.4, "mark": "R1.1", "profile": "P1", "run": "R1"}, {"count": 1, "length_mm": 1778, "mark": "R1.2", "profile": "P1", "run": "R1"}],
      "two_people": true
    },
    {
      "area": "Ridge",
      "job": "Alder House",
      "kilograms": 9.243,
      "label": "B2",
      "material": {"colour": "Slate", "gauge": "24 ga", "metal": "galvanised-steel"},
      "order": "0b54c3f4-1a2b-4c3d-8e4f-000000000001",
      "pieces": [{"count": 1, "length_mm": 3200.4, "mark": "R1.1", "profile": "P1", "run": "R1"}, {"count": 1, "length_mm": 1778, "mark": "R1.2", "profile": "P1", "run": "R1"}],
      "two_people": true
    }
  ],
  "id": "60f6a235-0389-4353-b917-dbd07f62eefd",
  "made_at": "2026-11-26T03:46:48Z"
}
','',0,0,0.0,0);
CREATE TABLE order_counts (order_id TEXT NOT NULL, state TEXT NOT NULL, count INTEGER NOT NULL CHECK (count >= 0), PRIMARY KEY (order_id, state)) WITHOUT ROWID;
INSERT INTO "order_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','bundled',0);
INSERT INTO "order_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','cut',0);
INSERT INTO "order_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','folded',0);
INSERT INTO "order_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','loaded',2);
INSERT INTO "order_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','ordered',0);
INSERT INTO "order_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','ordered',16);
INSERT INTO "order_counts" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','bundled',0);
INSERT INTO "order_counts" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','cut',0);
INSERT INTO "order_counts" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','folded',0);
INSERT INTO "order_counts" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','loaded',2);
INSERT INTO "order_counts" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','ordered',0);
CREATE TABLE orders (id TEXT NOT NULL, revision INTEGER NOT NULL CHECK (revision >= 1), hash TEXT NOT NULL, previous_hash TEXT NOT NULL, job_name TEXT NOT NULL, customer TEXT NOT NULL, wanted_by TEXT NOT NULL, received_at TEXT NOT NULL, document TEXT NOT NULL, derived TEXT NOT NULL, PRIMARY KEY (id, revision));
INSERT INTO "orders" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001',1,'e383cb76dba58830462e1feea7a512bf26199156c0b087b4342b7f0e4f61ec12','','Alder House','Invented customer','2026-12-10','2026-11-26T03:46:42Z','{
  "format": "lapwright/order",
  "version": 1,
  "program": "0.1.0",
  "accessories": [
    {"count": 34, "derivation": {"formula": 15, "values": [34, 2, 304.8, 4876.8]}, "name": "fastener", "run": "R1", "trim": "ridge-cap"},
    {"count": 1, "derivation": {"formula": 16, "values": [1, 328.867958, 1, 0]}, "length_mm": 328.867958, "name": "sealant", "run": "R1", "trim": "ridge-cap"}
  ],
  "formulas": [
    {
      "text": "{line}, {angle} pressed flat: takes up {deduction} = 2 × setback {setback} − allowance {allowance}",
      "values": [
        {"name": "line", "type": "text"},
        {"name": "angle", "type": "degrees"},
        {"name": "radius", "type": "text"},
        {"name": "deduction", "type": "text"},
        {"name": "setback", "type": "text"},
        {"name": "allowance", "type": "text"}
      ]
    },
    {
      "text": "{line}, {angle} over an inside radius of {radius}: takes up {deduction} = 2 × setback {setback} − allowance {allowance}",
      "values": [
        {"name": "line", "type": "text"},
        {"name": "angle", "type": "degrees"},
        {"name": "radius", "type": "text"},
        {"name": "deduction", "type": "text"},
        {"name": "setback", "type": "text"},
        {"name": "allowance", "type": "text"}
      ]
    },
    {"text": "setback = tan(half the fold angle) × (inside radius + thickness); of a hem''s edge inside radius + thickness"},
    {
      "source": "Kalpakjian and Schmid, Manufacturing Engineering and Technology, 6th edition in SI units, p. 418, eq. 16.2",
      "text": "allowance = fold angle in radians × (inside radius + K × thickness)"
    },
    {
      "text": "thickness {thickness}: {gauge} {metal}",
      "values": [{"name": "thickness", "type": "text"}, {"name": "gauge", "type": "text"}, {"name": "metal", "type": "text"}]
    },
    {
      "source": "Default of 0.44: common practice, no source. Beside it: FAA-H-8083-31 bend allowance (0.01743 R + 0.0078 T) per degree is K 0.447.",
      "text": "K {k} is kept with the metal {metal}",
      "values": [{"name": "k", "type": "number"}, {"name": "metal", "type": "text"}]
    },
    {
      "text": "girth {girth}, exactly {fine} = outside legs {legs} + hems {hems} − what the bends take up {deductions}",
      "values": [
        {"name": "girth", "type": "mm"},
        {"name": "fine", "type": "text"},
        {"name": "legs", "type": "mm"},
        {"name": "hems", "type": "mm"},
        {"name": "deductions", "type": "text"}
      ]
    },
    {
      "source": "New Zealand Metal Roof and Wall Cladding Code of Practice v3, flashing cover (metalroofing.org.nz): ridge cover at least 130 mm in the lightest case",
      "text": "{leg} {length}, as the trim has it; at least {least} by {rule}",
      "values": [
        {"name": "leg", "type": "text"},
        {"name": "length", "type": "mm"},
        {"name": "constant", "type": "mm"},
        {"name": "least", "type": "mm"},
        {"name": "rule", "type": "text"}
      ]
    },
    {
      "text": "{slope} {angle} is {rise} in 12",
      "values": [{"name": "slope", "type": "text"}, {"name": "angle", "type": "degrees"}, {"name": "rise", "type": "number"}]
    },
    {
      "text": "bend {number}, {before} to {after}: folded {fold}, which leaves {included} between them; turn {turn} = −{measure1} {value1} − {measure2} {value2}",
      "values": [
        {"name": "number", "type": "count"},
        {"name": "before", "type": "text"},
        {"name": "after", "type": "text"},
        {"name": "fold", "type": "degrees"},
        {"name": "included", "type": "degrees"},
        {"name": "turn", "type": "degrees"},
        {"name": "constant", "type": "degrees"},
        {"name": "measure1", "type": "text"},
        {"name": "value1", "type": "degrees"},
        {"name": "measure2", "type": "text"},
        {"name": "value2", "type": "degrees"}
      ]
    },
    {
      "source": "New Zealand Metal Roof and Wall Cladding Code of Practice v3, flashing laps: at least 100 mm sealed",
      "text": "each piece laps the one before by {lap}",
      "values": [{"name": "lap", "type": "mm"}]
    },
    {
      "text": "{mass} kg per metre: girth {girth} × {surface} kg per square metre of {gauge} {metal}",
      "values": [
        {"name": "mass", "type": "number"},
        {"name": "girth", "type": "mm"},
        {"name": "surface", "type": "number"},
        {"name": "gauge", "type": "text"},
        {"name": "metal", "type": "text"}
      ]
    },
    {"text": "{length} as measured, entered as {entered}", "values": [{"name": "length", "type": "mm"}, {"name": "entered", "type": "text"}]},
    {"text": "{usable} to cover", "values": [{"name": "usable", "type": "mm"}, {"name": "measured", "type": "mm"}]},
    {
      "text": "{count} pieces, {policy}: ({length} − lap {lap}) / (longest piece {limit} − lap {lap}) = {parts}, rounded up; with their laps they are {total} together",
      "values": [
        {"name": "count", "type": "count"},
        {"name": "policy", "type": "text"},
        {"name": "length", "type": "mm"},
        {"name": "lap", "type": "mm"},
        {"name": "limit", "type": "mm"},
        {"name": "parts", "type": "number"},
        {"name": "total", "type": "mm"}
      ]
    },
    {
      "source": "common practice, no source",
      "text": "{count} fasteners in {rows} rows, at most {spacing} apart on {length}, both ends too",
      "values": [{"name": "count", "type": "count"}, {"name": "rows", "type": "count"}, {"name": "spacing", "type": "mm"}, {"name": "length", "type": "mm"}]
    },
    {
      "text": "sealant: {beads} × the girth of {girth}, a bead at each lap ({laps}) and each mitre ({corners})",
      "values": [{"name": "beads", "type": "count"}, {"name": "girth", "type": "mm"}, {"name": "laps", "type": "count"}, {"name": "corners", "type": "count"}]
    }
  ],
  "id": "0b54c3f4-1a2b-4c3d-8e4f-000000000001",
  "job": {
    "address": "1 Invented Lane",
    "chains": [
      {
        "corners": [],
        "id": "ridge",
        "name": "Ridge",
        "runs": [
          {
            "id": "R1",
            "kind": "ridge",
            "lengths": [{"entered": "16''", "mm": 4876.8}],
            "other_slope": {"rise": 6, "run": 12},
            "slope": {"rise": 6, "run": 12},
            "trims": [{"trim": "ridge-cap"}]
          }
        ]
      }
    ],
    "customer": "Invented customer",
    "id": "0b54c3f4-1a2b-4c3d-8e4f-000000000001",
    "material": {"colour": "Slate", "gauge": "24 ga", "metal": "galvanised-steel"},
    "name": "Alder House",
    "rule_sets": ["irc-flashing"],
    "wanted_by": "2026-12-10"
  },
  "pieces": [
    {"blank_length_mm": 3200.4, "length_mm": 3200.4, "mark": "R1.1", "profile": 0, "run": "R1"},
    {"blank_length_mm": 1778, "length_mm": 1778, "mark": "R1.2", "profile": 0, "run": "R1", "start": {"allowance_mm": 101.6, "kind": "lap"}}
  ],
  "profiles": [
    {
      "derivations": [
        {
          "because": [
            {"formula": 0, "values": ["start hem edge", 180, "0.0000\" (0.00 mm)", "0.0170\" (0.43 mm)", "0.0276\" (0.70 mm)", "0.0382\" (0.97 mm)"]},
            {"formula": 1, "values": ["bend 1", 53.130102354, "0.0276\" (0.70 mm)", "0.0183\" (0.47 mm)", "0.0276\" (0.70 mm)", "0.0369\" (0.94 mm)"]},
            {"formula": 0, "values": ["end hem edge", 180, "0.0000\" (0.00 mm)", "0.0170\" (0.43 mm)", "0.0276\" (0.70 mm)", "0.0382\" (0.97 mm)"]},
            {"formula": 2},
            {"formula": 3},
            {"formula": 4, "values": ["0.0276\" (0.70 mm)", "24 ga", "Galvanised steel"]},
            {"formula": 5, "values": [0.44, "Galvanised steel"]}
          ],
          "formula": 6,
          "values": [328.867958, "12.9476\" (328.87 mm)", 304.8, 25.4, "0.0524\" (1.33 mm)"]
        },
        {"formula": 7, "values": ["Wing on the plane of the run", 152.4, 152.4, 130, "Code of Practice v3, cover C1"]},
        {"formula": 7, "values": ["Wing on the other plane", 152.4, 152.4, 130, "Code of Practice v3, cover C1"]},
        {
          "because": [{"formula": 8, "values": ["slope", 26.565051177, 6]}, {"formula": 8, "values": ["other slope", 26.565051177, 6]}],
          "formula": 9,
          "values": [
            1,
            "Wing on the plane of the run",
            "Wing on the other plane",
            53.130102354,
            126.869897646,
            -53.130102354,
            0,
            "slope",
            26.565051177,
            "other slope",
            26.565051177
          ]
        },
        {"formula": 10, "values": [101.6]},
        {"formula": 11, "values": [1.857, 328.867958, 5.6453, "24 ga", "Galvanised steel"]}
      ],
      "girth_mm": 328.867958,
      "id": "P1",
      "kilograms_per_metre": 1.8565582832974,
      "material": {"colour": "Slate", "gauge": "24 ga", "metal": "galvanised-steel"},
      "profile": {
        "bends": [{"inside_radius_mm": 0.70104, "turn_degrees": -53.130102354}],
        "colour_face": "left",
        "end_hem": {"flat_mm": 12.7, "inside_radius_mm": 0, "kind": "closed", "side": "right"},
        "first_direction_degrees": 26.565051177,
        "legs": [{"length_mm": 152.4, "name": "first_wing"}, {"length_mm": 152.4, "name": "second_wing"}],
        "name": "Ridge cap",
        "start_hem": {"flat_mm": 12.7, "inside_radius_mm": 0, "kind": "closed", "side": "right"},
        "start_x_mm": -136.310704,
        "start_y_mm": -68.155352,
        "trim": "ridge-cap"
      },
      "thickness_mm": 0.70104
    }
  ],
  "revision": 1,
  "runs": [
    {
      "derivations": [
        {"because": [{"formula": 12, "values": [4876.8, "16''"]}], "formula": 13, "values": [4876.8, 4876.8]},
        {"formula": 14, "values": [2, "as full lengths and the rest", 4876.8, 101.6, 3200.4, 1.55, 4978.4]}
      ],
      "mark": "R1",
      "piece_count": 2,
      "piece_limit_mm": 3200.4,
      "profile": 0,
      "run": "R1",
      "trim": "ridge-cap",
      "usable_length_mm": 4876.8
    }
  ]
}
','{"format":"lapwright/order","version":1,"program":"0.1.0","accessories":[{"count":34,"derivation":{"formula":15,"values":[34,2,304.8,4876.8]},"name":"fastener","run":"R1","trim":"ridge-cap"},{"count":1,"derivation":{"formula":16,"values":[1,328.867958,1,0]},"length_mm":328.867958,"name":"sealant","run":"R1","trim":"ridge-cap"}],"formulas":[{"text":"{line}, {angle} pressed flat: takes up {deduction} = 2 × setback {setback} − allowance {allowance}","values":[{"name":"line","type":"text"},{"name":"angle","type":"degrees"},{"name":"radius","type":"text"},{"name":"deduction","type":"text"},{"name":"setback","type":"text"},{"name":"allowance","type":"text"}]},{"text":"{line}, {angle} over an inside radius of {radius}: takes up {deduction} = 2 × setback {setback} − allowance {allowance}","values":[{"name":"line","type":"text"},{"name":"angle","type":"degrees"},{"name":"radius","type":"text"},{"name":"deduction","type":"text"},{"name":"setback","type":"text"},{"name":"allowance","type":"text"}]},{"text":"setback = tan(half the fold angle) × (inside radius + thickness); of a hem''s edge inside radius + thickness"},{"source":"Kalpakjian and Schmid, Manufacturing Engineering and Technology, 6th edition in SI units, p. 418, eq. 16.2","text":"allowance = fold angle in radians × (inside radius + K × thickness)"},{"text":"thickness {thickness}: {gauge} {metal}","values":[{"name":"thickness","type":"text"},{"name":"gauge","type":"text"},{"name":"metal","type":"text"}]},{"source":"Default of 0.44: common practice, no source. Beside it: FAA-H-8083-31 bend allowance (0.01743 R + 0.0078 T) per degree is K 0.447.","text":"K {k} is kept with the metal {metal}","values":[{"name":"k","type":"number"},{"name":"metal","type":"text"}]},{"text":"girth {girth}, exactly {fine} = outside legs {legs} + hems {hems} − what the bends take up {deductions}","values":[{"name":"girth","type":"mm"},{"name":"fine","type":"text"},{"name":"legs","type":"mm"},{"name":"hems","type":"mm"},{"name":"deductions","type":"text"}]},{"source":"New Zealand Metal Roof and Wall Cladding Code of Practice v3, flashing cover (metalroofing.org.nz): ridge cover at least 130 mm in the lightest case","text":"{leg} {length}, as the trim has it; at least {least} by {rule}","values":[{"name":"leg","type":"text"},{"name":"length","type":"mm"},{"name":"constant","type":"mm"},{"name":"least","type":"mm"},{"name":"rule","type":"text"}]},{"text":"{slope} {angle} is {rise} in 12","values":[{"name":"slope","type":"text"},{"name":"angle","type":"degrees"},{"name":"rise","type":"number"}]},{"text":"bend {number}, {before} to {after}: folded {fold}, which leaves {included} between them; turn {turn} = −{measure1} {value1} − {measure2} {value2}","values":[{"name":"number","type":"count"},{"name":"before","type":"text"},{"name":"after","type":"text"},{"name":"fold","type":"degrees"},{"name":"included","type":"degrees"},{"name":"turn","type":"degrees"},{"name":"constant","type":"degrees"},{"name":"measure1","type":"text"},{"name":"value1","type":"degrees"},{"name":"measure2","type":"text"},{"name":"value2","type":"degrees"}]},{"source":"New Zealand Metal Roof and Wall Cladding Code of Practice v3, flashing laps: at least 100 mm sealed","text":"each piece laps the one before by {lap}","values":[{"name":"lap","type":"mm"}]},{"text":"{mass} kg per metre: girth {girth} × {surface} kg per square metre of {gauge} {metal}","values":[{"name":"mass","type":"number"},{"name":"girth","type":"mm"},{"name":"surface","type":"number"},{"name":"gauge","type":"text"},{"name":"metal","type":"text"}]},{"text":"{length} as measured, entered as {entered}","values":[{"name":"length","type":"mm"},{"name":"entered","type":"text"}]},{"text":"{usable} to cover","values":[{"name":"usable","type":"mm"},{"name":"measured","type":"mm"}]},{"text":"{count} pieces, {policy}: ({length} − lap {lap}) / (longest piece {limit} − lap {lap}) = {parts}, rounded up; with their laps they are {total} together","values":[{"name":"count","type":"count"},{"name":"policy","type":"text"},{"name":"length","type":"mm"},{"name":"lap","type":"mm"},{"name":"limit","type":"mm"},{"name":"parts","type":"number"},{"name":"total","type":"mm"}]},{"source":"common practice, no source","text":"{count} fasteners in {rows} rows, at most {spacing} apart on {length}, both ends too","values":[{"name":"count","type":"count"},{"name":"rows","type":"count"},{"name":"spacing","type":"mm"},{"name":"length","type":"mm"}]},{"text":"sealant: {beads} × the girth of {girth}, a bead at each lap ({laps}) and each mitre ({corners})","values":[{"name":"beads","type":"count"},{"name":"girth","type":"mm"},{"name":"laps","type":"count"},{"name":"corners","type":"count"}]}],"id":"0b54c3f4-1a2b-4c3d-8e4f-000000000001","job":{"address":"1 Invented Lane","chains":[{"id":"ridge","name":"Ridge","runs":[{"id":"R1","kind":"ridge","lengths":[{"entered":"16''","mm":4876.8}],"other_slope":{"rise":6,"run":12},"slope":{"rise":6,"run":12},"trims":[{"trim":"ridge-cap"}]}]}],"customer":"Invented customer","id":"0b54c3f4-1a2b-4c3d-8e4f-000000000001","material":{"colour":"Slate","gauge":"24 ga","metal":"galvanised-steel"},"name":"Alder House","rule_sets":["irc-flashing"],"wanted_by":"2026-12-10"},"pieces":[{"blank_length_mm":3200.4,"length_mm":3200.4,"mark":"R1.1","profile":0,"run":"R1"},{"blank_length_mm":1778,"length_mm":1778,"mark":"R1.2","profile":0,"run":"R1","start":{"allowance_mm":101.6,"kind":"lap"}}],"profiles":[{"derivations":[{"because":[{"formula":0,"values":["start hem edge",180,"0.0000\" (0.00 mm)","0.0170\" (0.43 mm)","0.0276\" (0.70 mm)","0.0382\" (0.97 mm)"]},{"formula":1,"values":["bend 1",53.130102354,"0.0276\" (0.70 mm)","0.0183\" (0.47 mm)","0.0276\" (0.70 mm)","0.0369\" (0.94 mm)"]},{"formula":0,"values":["end hem edge",180,"0.0000\" (0.00 mm)","0.0170\" (0.43 mm)","0.0276\" (0.70 mm)","0.0382\" (0.97 mm)"]},{"formula":2},{"formula":3},{"formula":4,"values":["0.0276\" (0.70 mm)","24 ga","Galvanised steel"]},{"formula":5,"values":[0.44,"Galvanised steel"]}],"formula":6,"values":[328.867958,"12.9476\" (328.87 mm)",304.8,25.4,"0.0524\" (1.33 mm)"]},{"formula":7,"values":["Wing on the plane of the run",152.4,152.4,130,"Code of Practice v3, cover C1"]},{"formula":7,"values":["Wing on the other plane",152.4,152.4,130,"Code of Practice v3, cover C1"]},{"because":[{"formula":8,"values":["slope",26.565051177,6]},{"formula":8,"values":["other slope",26.565051177,6]}],"formula":9,"values":[1,"Wing on the plane of the run","Wing on the other plane",53.130102354,126.869897646,-53.130102354,0,"slope",26.565051177,"other slope",26.565051177]},{"formula":10,"values":[101.6]},{"formula":11,"values":[1.857,328.867958,5.6453,"24 ga","Galvanised steel"]}],"girth_mm":328.867958,"id":"P1","kilograms_per_metre":1.8565582832974,"material":{"colour":"Slate","gauge":"24 ga","metal":"galvanised-steel"},"profile":{"bends":[{"inside_radius_mm":0.70104,"turn_degrees":-53.130102354}],"colour_face":"left","end_hem":{"flat_mm":12.7,"inside_radius_mm":0,"kind":"closed","side":"right"},"first_direction_degrees":26.565051177,"legs":[{"length_mm":152.4,"name":"first_wing"},{"length_mm":152.4,"name":"second_wing"}],"name":"Ridge cap","start_hem":{"flat_mm":12.7,"inside_radius_mm":0,"kind":"closed","side":"right"},"start_x_mm":-136.310704,"start_y_mm":-68.155352,"trim":"ridge-cap"},"thickness_mm":0.70104}],"revision":1,"runs":[{"derivations":[{"because":[{"formula":12,"values":[4876.8,"16''"]}],"formula":13,"values":[4876.8,4876.8]},{"formula":14,"values":[2,"as full lengths and the rest",4876.8,101.6,3200.4,1.55,4978.4]}],"mark":"R1","piece_count":2,"piece_limit_mm":3200.4,"profile":0,"run":"R1","trim":"ridge-cap","usable_length_mm":4876.8}]}');
INSERT INTO "orders" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001',2,'266b8e4e33cf26be818d8b7c021b8f985f785295b39e411c9bc51c62b6c6f25b','e383cb76dba58830462e1feea7a512bf26199156c0b087b4342b7f0e4f61ec12','Alder House','Invented customer','2026-12-10','2026-11-26T03:46:43Z','{
  "format": "lapwright/order",
  "version": 1,
  "program": "0.1.0",
  "accessories": [
    {"count": 34, "derivation": {"formula": 15, "values": [34, 2, 304.8, 4876.8]}, "name": "fastener", "run": "R1", "trim": "ridge-cap"},
    {"count": 1, "derivation": {"formula": 16, "values": [1, 328.867958, 1, 0]}, "length_mm": 328.867958, "name": "sealant", "run": "R1", "trim": "ridge-cap"}
  ],
  "formulas": [
    {
      "text": "{line}, {angle} pressed flat: takes up {deduction} = 2 × setback {setback} − allowance {allowance}",
      "values": [
        {"name": "line", "type": "text"},
        {"name": "angle", "type": "degrees"},
        {"name": "radius", "type": "text"},
        {"name": "deduction", "type": "text"},
        {"name": "setback", "type": "text"},
        {"name": "allowance", "type": "text"}
      ]
    },
    {
      "text": "{line}, {angle} over an inside radius of {radius}: takes up {deduction} = 2 × setback {setback} − allowance {allowance}",
      "values": [
        {"name": "line", "type": "text"},
        {"name": "angle", "type": "degrees"},
        {"name": "radius", "type": "text"},
        {"name": "deduction", "type": "text"},
        {"name": "setback", "type": "text"},
        {"name": "allowance", "type": "text"}
      ]
    },
    {"text": "setback = tan(half the fold angle) × (inside radius + thickness); of a hem''s edge inside radius + thickness"},
    {
      "source": "Kalpakjian and Schmid, Manufacturing Engineering and Technology, 6th edition in SI units, p. 418, eq. 16.2",
      "text": "allowance = fold angle in radians × (inside radius + K × thickness)"
    },
    {
      "text": "thickness {thickness}: {gauge} {metal}",
      "values": [{"name": "thickness", "type": "text"}, {"name": "gauge", "type": "text"}, {"name": "metal", "type": "text"}]
    },
    {
      "source": "Default of 0.44: common practice, no source. Beside it: FAA-H-8083-31 bend allowance (0.01743 R + 0.0078 T) per degree is K 0.447.",
      "text": "K {k} is kept with the metal {metal}",
      "values": [{"name": "k", "type": "number"}, {"name": "metal", "type": "text"}]
    },
    {
      "text": "girth {girth}, exactly {fine} = outside legs {legs} + hems {hems} − what the bends take up {deductions}",
      "values": [
        {"name": "girth", "type": "mm"},
        {"name": "fine", "type": "text"},
        {"name": "legs", "type": "mm"},
        {"name": "hems", "type": "mm"},
        {"name": "deductions", "type": "text"}
      ]
    },
    {
      "source": "New Zealand Metal Roof and Wall Cladding Code of Practice v3, flashing cover (metalroofing.org.nz): ridge cover at least 130 mm in the lightest case",
      "text": "{leg} {length}, as the trim has it; at least {least} by {rule}",
      "values": [
        {"name": "leg", "type": "text"},
        {"name": "length", "type": "mm"},
        {"name": "constant", "type": "mm"},
        {"name": "least", "type": "mm"},
        {"name": "rule", "type": "text"}
      ]
    },
    {
      "text": "{slope} {angle} is {rise} in 12",
      "values": [{"name": "slope", "type": "text"}, {"name": "angle", "type": "degrees"}, {"name": "rise", "type": "number"}]
    },
    {
      "text": "bend {number}, {before} to {after}: folded {fold}, which leaves {included} between them; turn {turn} = −{measure1} {value1} − {measure2} {value2}",
      "values": [
        {"name": "number", "type": "count"},
        {"name": "before", "type": "text"},
        {"name": "after", "type": "text"},
        {"name": "fold", "type": "degrees"},
        {"name": "included", "type": "degrees"},
        {"name": "turn", "type": "degrees"},
        {"name": "constant", "type": "degrees"},
        {"name": "measure1", "type": "text"},
        {"name": "value1", "type": "degrees"},
        {"name": "measure2", "type": "text"},
        {"name": "value2", "type": "degrees"}
      ]
    },
    {
      "source": "New Zealand Metal Roof and Wall Cladding Code of Practice v3, flashing laps: at least 100 mm sealed",
      "text": "each piece laps the one before by {lap}",
      "values": [{"name": "lap", "type": "mm"}]
    },
    {
      "text": "{mass} kg per metre: girth {girth} × {surface} kg per square metre of {gauge} {metal}",
      "values": [
        {"name": "mass", "type": "number"},
        {"name": "girth", "type": "mm"},
        {"name": "surface", "type": "number"},
        {"name": "gauge", "type": "text"},
        {"name": "metal", "type": "text"}
      ]
    },
    {"text": "{length} as measured, entered as {entered}", "values": [{"name": "length", "type": "mm"}, {"name": "entered", "type": "text"}]},
    {"text": "{usable} to cover", "values": [{"name": "usable", "type": "mm"}, {"name": "measured", "type": "mm"}]},
    {
      "text": "{count} pieces, {policy}: ({length} − lap {lap}) / (longest piece {limit} − lap {lap}) = {parts}, rounded up; with their laps they are {total} together",
      "values": [
        {"name": "count", "type": "count"},
        {"name": "policy", "type": "text"},
        {"name": "length", "type": "mm"},
        {"name": "lap", "type": "mm"},
        {"name": "limit", "type": "mm"},
        {"name": "parts", "type": "number"},
        {"name": "total", "type": "mm"}
      ]
    },
    {
      "source": "common practice, no source",
      "text": "{count} fasteners in {rows} rows, at most {spacing} apart on {length}, both ends too",
      "values": [{"name": "count", "type": "count"}, {"name": "rows", "type": "count"}, {"name": "spacing", "type": "mm"}, {"name": "length", "type": "mm"}]
    },
    {
      "text": "sealant: {beads} × the girth of {girth}, a bead at each lap ({laps}) and each mitre ({corners})",
      "values": [{"name": "beads", "type": "count"}, {"name": "girth", "type": "mm"}, {"name": "laps", "type": "count"}, {"name": "corners", "type": "count"}]
    }
  ],
  "id": "0b54c3f4-1a2b-4c3d-8e4f-000000000001",
  "job": {
    "address": "1 Invented Lane",
    "chains": [
      {
        "corners": [],
        "id": "ridge",
        "name": "Ridge",
        "runs": [
          {
            "id": "R1",
            "kind": "ridge",
            "lengths": [{"entered": "16''", "mm": 4876.8}],
            "note": "second revision",
            "other_slope": {"rise": 6, "run": 12},
            "slope": {"rise": 6, "run": 12},
            "trims": [{"trim": "ridge-cap"}]
          }
        ]
      }
    ],
    "customer": "Invented customer",
    "id": "0b54c3f4-1a2b-4c3d-8e4f-000000000001",
    "material": {"colour": "Slate", "gauge": "24 ga", "metal": "galvanised-steel"},
    "name": "Alder House",
    "rule_sets": ["irc-flashing"],
    "wanted_by": "2026-12-10"
  },
  "pieces": [
    {"blank_length_mm": 3200.4, "length_mm": 3200.4, "mark": "R1.1", "profile": 0, "run": "R1"},
    {"blank_length_mm": 1778, "length_mm": 1778, "mark": "R1.2", "profile": 0, "run": "R1", "start": {"allowance_mm": 101.6, "kind": "lap"}}
  ],
  "previous_hash": "e383cb76dba58830462e1feea7a512bf26199156c0b087b4342b7f0e4f61ec12",
  "profiles": [
    {
      "derivations": [
        {
          "because": [
            {"formula": 0, "values": ["start hem edge", 180, "0.0000\" (0.00 mm)", "0.0170\" (0.43 mm)", "0.0276\" (0.70 mm)", "0.0382\" (0.97 mm)"]},
            {"formula": 1, "values": ["bend 1", 53.130102354, "0.0276\" (0.70 mm)", "0.0183\" (0.47 mm)", "0.0276\" (0.70 mm)", "0.0369\" (0.94 mm)"]},
            {"formula": 0, "values": ["end hem edge", 180, "0.0000\" (0.00 mm)", "0.0170\" (0.43 mm)", "0.0276\" (0.70 mm)", "0.0382\" (0.97 mm)"]},
            {"formula": 2},
            {"formula": 3},
            {"formula": 4, "values": ["0.0276\" (0.70 mm)", "24 ga", "Galvanised steel"]},
            {"formula": 5, "values": [0.44, "Galvanised steel"]}
          ],
          "formula": 6,
          "values": [328.867958, "12.9476\" (328.87 mm)", 304.8, 25.4, "0.0524\" (1.33 mm)"]
        },
        {"formula": 7, "values": ["Wing on the plane of the run", 152.4, 152.4, 130, "Code of Practice v3, cover C1"]},
        {"formula": 7, "values": ["Wing on the other plane", 152.4, 152.4, 130, "Code of Practice v3, cover C1"]},
        {
          "because": [{"formula": 8, "values": ["slope", 26.565051177, 6]}, {"formula": 8, "values": ["other slope", 26.565051177, 6]}],
          "formula": 9,
          "values": [
            1,
            "Wing on the plane of the run",
            "Wing on the other plane",
            53.130102354,
            126.869897646,
            -53.130102354,
            0,
            "slope",
            26.565051177,
            "other slope",
            26.565051177
          ]
        },
        {"formula": 10, "values": [101.6]},
        {"formula": 11, "values": [1.857, 328.867958, 5.6453, "24 ga", "Galvanised steel"]}
      ],
      "girth_mm": 328.867958,
      "id": "P1",
      "kilograms_per_metre": 1.8565582832974,
      "material": {"colour": "Slate", "gauge": "24 ga", "metal": "galvanised-steel"},
      "profile": {
        "bends": [{"inside_radius_mm": 0.70104, "turn_degrees": -53.130102354}],
        "colour_face": "left",
        "end_hem": {"flat_mm": 12.7, "inside_radius_mm": 0, "kind": "closed", "side": "right"},
        "first_direction_degrees": 26.565051177,
        "legs": [{"length_mm": 152.4, "name": "first_wing"}, {"length_mm": 152.4, "name": "second_wing"}],
        "name": "Ridge cap",
        "start_hem": {"flat_mm": 12.7, "inside_radius_mm": 0, "kind": "closed", "side": "right"},
        "start_x_mm": -136.310704,
        "start_y_mm": -68.155352,
        "trim": "ridge-cap"
      },
      "thickness_mm": 0.70104
    }
  ],
  "revision": 2,
  "runs": [
    {
      "derivations": [
        {"because": [{"formula": 12, "values": [4876.8, "16''"]}], "formula": 13, "values": [4876.8, 4876.8]},
        {"formula": 14, "values": [2, "as full lengths and the rest", 4876.8, 101.6, 3200.4, 1.55, 4978.4]}
      ],
      "mark": "R1",
      "piece_count": 2,
      "piece_limit_mm": 3200.4,
      "profile": 0,
      "run": "R1",
      "trim": "ridge-cap",
      "usable_length_mm": 4876.8
    }
  ]
}
','{"format":"lapwright/order","version":1,"program":"0.1.0","accessories":[{"count":34,"derivation":{"formula":15,"values":[34,2,304.8,4876.8]},"name":"fastener","run":"R1","trim":"ridge-cap"},{"count":1,"derivation":{"formula":16,"values":[1,328.867958,1,0]},"length_mm":328.867958,"name":"sealant","run":"R1","trim":"ridge-cap"}],"formulas":[{"text":"{line}, {angle} pressed flat: takes up {deduction} = 2 × setback {setback} − allowance {allowance}","values":[{"name":"line","type":"text"},{"name":"angle","type":"degrees"},{"name":"radius","type":"text"},{"name":"deduction","type":"text"},{"name":"setback","type":"text"},{"name":"allowance","type":"text"}]},{"text":"{line}, {angle} over an inside radius of {radius}: takes up {deduction} = 2 × setback {setback} − allowance {allowance}","values":[{"name":"line","type":"text"},{"name":"angle","type":"degrees"},{"name":"radius","type":"text"},{"name":"deduction","type":"text"},{"name":"setback","type":"text"},{"name":"allowance","type":"text"}]},{"text":"setback = tan(half the fold angle) × (inside radius + thickness); of a hem''s edge inside radius + thickness"},{"source":"Kalpakjian and Schmid, Manufacturing Engineering and Technology, 6th edition in SI units, p. 418, eq. 16.2","text":"allowance = fold angle in radians × (inside radius + K × thickness)"},{"text":"thickness {thickness}: {gauge} {metal}","values":[{"name":"thickness","type":"text"},{"name":"gauge","type":"text"},{"name":"metal","type":"text"}]},{"source":"Default of 0.44: common practice, no source. Beside it: FAA-H-8083-31 bend allowance (0.01743 R + 0.0078 T) per degree is K 0.447.","text":"K {k} is kept with the metal {metal}","values":[{"name":"k","type":"number"},{"name":"metal","type":"text"}]},{"text":"girth {girth}, exactly {fine} = outside legs {legs} + hems {hems} − what the bends take up {deductions}","values":[{"name":"girth","type":"mm"},{"name":"fine","type":"text"},{"name":"legs","type":"mm"},{"name":"hems","type":"mm"},{"name":"deductions","type":"text"}]},{"source":"New Zealand Metal Roof and Wall Cladding Code of Practice v3, flashing cover (metalroofing.org.nz): ridge cover at least 130 mm in the lightest case","text":"{leg} {length}, as the trim has it; at least {least} by {rule}","values":[{"name":"leg","type":"text"},{"name":"length","type":"mm"},{"name":"constant","type":"mm"},{"name":"least","type":"mm"},{"name":"rule","type":"text"}]},{"text":"{slope} {angle} is {rise} in 12","values":[{"name":"slope","type":"text"},{"name":"angle","type":"degrees"},{"name":"rise","type":"number"}]},{"text":"bend {number}, {before} to {after}: folded {fold}, which leaves {included} between them; turn {turn} = −{measure1} {value1} − {measure2} {value2}","values":[{"name":"number","type":"count"},{"name":"before","type":"text"},{"name":"after","type":"text"},{"name":"fold","type":"degrees"},{"name":"included","type":"degrees"},{"name":"turn","type":"degrees"},{"name":"constant","type":"degrees"},{"name":"measure1","type":"text"},{"name":"value1","type":"degrees"},{"name":"measure2","type":"text"},{"name":"value2","type":"degrees"}]},{"source":"New Zealand Metal Roof and Wall Cladding Code of Practice v3, flashing laps: at least 100 mm sealed","text":"each piece laps the one before by {lap}","values":[{"name":"lap","type":"mm"}]},{"text":"{mass} kg per metre: girth {girth} × {surface} kg per square metre of {gauge} {metal}","values":[{"name":"mass","type":"number"},{"name":"girth","type":"mm"},{"name":"surface","type":"number"},{"name":"gauge","type":"text"},{"name":"metal","type":"text"}]},{"text":"{length} as measured, entered as {entered}","values":[{"name":"length","type":"mm"},{"name":"entered","type":"text"}]},{"text":"{usable} to cover","values":[{"name":"usable","type":"mm"},{"name":"measured","type":"mm"}]},{"text":"{count} pieces, {policy}: ({length} − lap {lap}) / (longest piece {limit} − lap {lap}) = {parts}, rounded up; with their laps they are {total} together","values":[{"name":"count","type":"count"},{"name":"policy","type":"text"},{"name":"length","type":"mm"},{"name":"lap","type":"mm"},{"name":"limit","type":"mm"},{"name":"parts","type":"number"},{"name":"total","type":"mm"}]},{"source":"common practice, no source","text":"{count} fasteners in {rows} rows, at most {spacing} apart on {length}, both ends too","values":[{"name":"count","type":"count"},{"name":"rows","type":"count"},{"name":"spacing","type":"mm"},{"name":"length","type":"mm"}]},{"text":"sealant: {beads} × the girth of {girth}, a bead at each lap ({laps}) and each mitre ({corners})","values":[{"name":"beads","type":"count"},{"name":"girth","type":"mm"},{"name":"laps","type":"count"},{"name":"corners","type":"count"}]}],"id":"0b54c3f4-1a2b-4c3d-8e4f-000000000001","job":{"address":"1 Invented Lane","chains":[{"id":"ridge","name":"Ridge","runs":[{"id":"R1","kind":"ridge","lengths":[{"entered":"16''","mm":4876.8}],"note":"second revision","other_slope":{"rise":6,"run":12},"slope":{"rise":6,"run":12},"trims":[{"trim":"ridge-cap"}]}]}],"customer":"Invented customer","id":"0b54c3f4-1a2b-4c3d-8e4f-000000000001","material":{"colour":"Slate","gauge":"24 ga","metal":"galvanised-steel"},"name":"Alder House","rule_sets":["irc-flashing"],"wanted_by":"2026-12-10"},"pieces":[{"blank_length_mm":3200.4,"length_mm":3200.4,"mark":"R1.1","profile":0,"run":"R1"},{"blank_length_mm":1778,"length_mm":1778,"mark":"R1.2","profile":0,"run":"R1","start":{"allowance_mm":101.6,"kind":"lap"}}],"previous_hash":"e383cb76dba58830462e1feea7a512bf26199156c0b087b4342b7f0e4f61ec12","profiles":[{"derivations":[{"because":[{"formula":0,"values":["start hem edge",180,"0.0000\" (0.00 mm)","0.0170\" (0.43 mm)","0.0276\" (0.70 mm)","0.0382\" (0.97 mm)"]},{"formula":1,"values":["bend 1",53.130102354,"0.0276\" (0.70 mm)","0.0183\" (0.47 mm)","0.0276\" (0.70 mm)","0.0369\" (0.94 mm)"]},{"formula":0,"values":["end hem edge",180,"0.0000\" (0.00 mm)","0.0170\" (0.43 mm)","0.0276\" (0.70 mm)","0.0382\" (0.97 mm)"]},{"formula":2},{"formula":3},{"formula":4,"values":["0.0276\" (0.70 mm)","24 ga","Galvanised steel"]},{"formula":5,"values":[0.44,"Galvanised steel"]}],"formula":6,"values":[328.867958,"12.9476\" (328.87 mm)",304.8,25.4,"0.0524\" (1.33 mm)"]},{"formula":7,"values":["Wing on the plane of the run",152.4,152.4,130,"Code of Practice v3, cover C1"]},{"formula":7,"values":["Wing on the other plane",152.4,152.4,130,"Code of Practice v3, cover C1"]},{"because":[{"formula":8,"values":["slope",26.565051177,6]},{"formula":8,"values":["other slope",26.565051177,6]}],"formula":9,"values":[1,"Wing on the plane of the run","Wing on the other plane",53.130102354,126.869897646,-53.130102354,0,"slope",26.565051177,"other slope",26.565051177]},{"formula":10,"values":[101.6]},{"formula":11,"values":[1.857,328.867958,5.6453,"24 ga","Galvanised steel"]}],"girth_mm":328.867958,"id":"P1","kilograms_per_metre":1.8565582832974,"material":{"colour":"Slate","gauge":"24 ga","metal":"galvanised-steel"},"profile":{"bends":[{"inside_radius_mm":0.70104,"turn_degrees":-53.130102354}],"colour_face":"left","end_hem":{"flat_mm":12.7,"inside_radius_mm":0,"kind":"closed","side":"right"},"first_direction_degrees":26.565051177,"legs":[{"length_mm":152.4,"name":"first_wing"},{"length_mm":152.4,"name":"second_wing"}],"name":"Ridge cap","start_hem":{"flat_mm":12.7,"inside_radius_mm":0,"kind":"closed","side":"right"},"start_x_mm":-136.310704,"start_y_mm":-68.155352,"trim":"ridge-cap"},"thickness_mm":0.70104}],"revision":2,"runs":[{"derivations":[{"because":[{"formula":12,"values":[4876.8,"16''"]}],"formula":13,"values":[4876.8,4876.8]},{"formula":14,"values":[2,"as full lengths and the rest",4876.8,101.6,3200.4,1.55,4978.4]}],"mark":"R1","piece_count":2,"piece_limit_mm":3200.4,"profile":0,"run":"R1","trim":"ridge-cap","usable_length_mm":4876.8}]}');
INSERT INTO "orders" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77',1,'2d1afbc51eb9a0a4ef6fe4360cdaf3a5bace82e78934bb8571aa1e5ef049a4b6','','Second house','Invented customer','2026-03-01','2026-11-26T03:46:44Z','{
  "format": "lapwright/order",
  "version": 1,
  "program": "0.1.0",
  "accessories": [
    {"count": 34, "derivation": {"formula": 15, "values": [34, 2, 304.8, 4876.8]}, "name": "fastener", "run": "R1", "trim": "ridge-cap"},
    {"count": 1, "derivation": {"formula": 16, "values": [1, 328.867958, 1, 0]}, "length_mm": 328.867958, "name": "sealant", "run": "R1", "trim": "ridge-cap"}
  ],
  "formulas": [
    {
      "text": "{line}, {angle} pressed flat: takes up {deduction} = 2 × setback {setback} − allowance {allowance}",
      "values": [
        {"name": "line", "type": "text"},
        {"name": "angle", "type": "degrees"},
        {"name": "radius", "type": "text"},
        {"name": "deduction", "type": "text"},
        {"name": "setback", "type": "text"},
        {"name": "allowance", "type": "text"}
      ]
    },
    {
      "text": "{line}, {angle} over an inside radius of {radius}: takes up {deduction} = 2 × setback {setback} − allowance {allowance}",
      "values": [
        {"name": "line", "type": "text"},
        {"name": "angle", "type": "degrees"},
        {"name": "radius", "type": "text"},
        {"name": "deduction", "type": "text"},
        {"name": "setback", "type": "text"},
        {"name": "allowance", "type": "text"}
      ]
    },
    {"text": "setback = tan(half the fold angle) × (inside radius + thickness); of a hem''s edge inside radius + thickness"},
    {
      "source": "Kalpakjian and Schmid, Manufacturing Engineering and Technology, 6th edition in SI units, p. 418, eq. 16.2",
      "text": "allowance = fold angle in radians × (inside radius + K × thickness)"
    },
    {
      "text": "thickness {thickness}: {gauge} {metal}",
      "values": [{"name": "thickness", "type": "text"}, {"name": "gauge", "type": "text"}, {"name": "metal", "type": "text"}]
    },
    {
      "source": "Default of 0.44: common practice, no source. Beside it: FAA-H-8083-31 bend allowance (0.01743 R + 0.0078 T) per degree is K 0.447.",
      "text": "K {k} is kept with the metal {metal}",
      "values": [{"name": "k", "type": "number"}, {"name": "metal", "type": "text"}]
    },
    {
      "text": "girth {girth}, exactly {fine} = outside legs {legs} + hems {hems} − what the bends take up {deductions}",
      "values": [
        {"name": "girth", "type": "mm"},
        {"name": "fine", "type": "text"},
        {"name": "legs", "type": "mm"},
        {"name": "hems", "type": "mm"},
        {"name": "deductions", "type": "text"}
      ]
    },
    {
      "source": "New Zealand Metal Roof and Wall Cladding Code of Practice v3, flashing cover (metalroofing.org.nz): ridge cover at least 130 mm in the lightest case",
      "text": "{leg} {length}, as the trim has it; at least {least} by {rule}",
      "values": [
        {"name": "leg", "type": "text"},
        {"name": "length", "type": "mm"},
        {"name": "constant", "type": "mm"},
        {"name": "least", "type": "mm"},
        {"name": "rule", "type": "text"}
      ]
    },
    {
      "text": "{slope} {angle} is {rise} in 12",
      "values": [{"name": "slope", "type": "text"}, {"name": "angle", "type": "degrees"}, {"name": "rise", "type": "number"}]
    },
    {
      "text": "bend {number}, {before} to {after}: folded {fold}, which leaves {included} between them; turn {turn} = −{measure1} {value1} − {measure2} {value2}",
      "values": [
        {"name": "number", "type": "count"},
        {"name": "before", "type": "text"},
        {"name": "after", "type": "text"},
        {"name": "fold", "type": "degrees"},
        {"name": "included", "type": "degrees"},
        {"name": "turn", "type": "degrees"},
        {"name": "constant", "type": "degrees"},
        {"name": "measure1", "type": "text"},
        {"name": "value1", "type": "degrees"},
        {"name": "measure2", "type": "text"},
        {"name": "value2", "type": "degrees"}
      ]
    },
    {
      "source": "New Zealand Metal Roof and Wall Cladding Code of Practice v3, flashing laps: at least 100 mm sealed",
      "text": "each piece laps the one before by {lap}",
      "values": [{"name": "lap", "type": "mm"}]
    },
    {
      "text": "{mass} kg per metre: girth {girth} × {surface} kg per square metre of {gauge} {metal}",
      "values": [
        {"name": "mass", "type": "number"},
        {"name": "girth", "type": "mm"},
        {"name": "surface", "type": "number"},
        {"name": "gauge", "type": "text"},
        {"name": "metal", "type": "text"}
      ]
    },
    {"text": "{length} as measured, entered as {entered}", "values": [{"name": "length", "type": "mm"}, {"name": "entered", "type": "text"}]},
    {"text": "{usable} to cover", "values": [{"name": "usable", "type": "mm"}, {"name": "measured", "type": "mm"}]},
    {
      "text": "{count} pieces, {policy}: ({length} − lap {lap}) / (longest piece {limit} − lap {lap}) = {parts}, rounded up; with their laps they are {total} together",
      "values": [
        {"name": "count", "type": "count"},
        {"name": "policy", "type": "text"},
        {"name": "length", "type": "mm"},
        {"name": "lap", "type": "mm"},
        {"name": "limit", "type": "mm"},
        {"name": "parts", "type": "number"},
        {"name": "total", "type": "mm"}
      ]
    },
    {
      "source": "common practice, no source",
      "text": "{count} fasteners in {rows} rows, at most {spacing} apart on {length}, both ends too",
      "values": [{"name": "count", "type": "count"}, {"name": "rows", "type": "count"}, {"name": "spacing", "type": "mm"}, {"name": "length", "type": "mm"}]
    },
    {
      "text": "sealant: {beads} × the girth of {girth}, a bead at each lap ({laps}) and each mitre ({corners})",
      "values": [{"name": "beads", "type": "count"}, {"name": "girth", "type": "mm"}, {"name": "laps", "type": "count"}, {"name": "corners", "type": "count"}]
    }
  ],
  "id": "9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77",
  "job": {
    "address": "1 Invented Lane",
    "chains": [
      {
        "corners": [],
        "id": "ridge",
        "name": "Ridge",
        "runs": [
          {
            "id": "R1",
            "kind": "ridge",
            "lengths": [{"entered": "16''", "mm": 4876.8}],
            "note": "second revision",
            "other_slope": {"rise": 6, "run": 12},
            "slope": {"rise": 6, "run": 12},
            "trims": [{"trim": "ridge-cap"}]
          }
        ]
      }
    ],
    "customer": "Invented customer",
    "id": "9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77",
    "material": {"colour": "Slate", "gauge": "24 ga", "metal": "galvanised-steel"},
    "name": "Second house",
    "rule_sets": ["irc-flashing"],
    "wanted_by": "2026-03-01"
  },
  "pieces": [
    {"blank_length_mm": 3200.4, "length_mm": 3200.4, "mark": "R1.1", "profile": 0, "run": "R1"},
    {"blank_length_mm": 1778, "length_mm": 1778, "mark": "R1.2", "profile": 0, "run": "R1", "start": {"allowance_mm": 101.6, "kind": "lap"}}
  ],
  "profiles": [
    {
      "derivations": [
        {
          "because": [
            {"formula": 0, "values": ["start hem edge", 180, "0.0000\" (0.00 mm)", "0.0170\" (0.43 mm)", "0.0276\" (0.70 mm)", "0.0382\" (0.97 mm)"]},
            {"formula": 1, "values": ["bend 1", 53.130102354, "0.0276\" (0.70 mm)", "0.0183\" (0.47 mm)", "0.0276\" (0.70 mm)", "0.0369\" (0.94 mm)"]},
            {"formula": 0, "values": ["end hem edge", 180, "0.0000\" (0.00 mm)", "0.0170\" (0.43 mm)", "0.0276\" (0.70 mm)", "0.0382\" (0.97 mm)"]},
            {"formula": 2},
            {"formula": 3},
            {"formula": 4, "values": ["0.0276\" (0.70 mm)", "24 ga", "Galvanised steel"]},
            {"formula": 5, "values": [0.44, "Galvanised steel"]}
          ],
          "formula": 6,
          "values": [328.867958, "12.9476\" (328.87 mm)", 304.8, 25.4, "0.0524\" (1.33 mm)"]
        },
        {"formula": 7, "values": ["Wing on the plane of the run", 152.4, 152.4, 130, "Code of Practice v3, cover C1"]},
        {"formula": 7, "values": ["Wing on the other plane", 152.4, 152.4, 130, "Code of Practice v3, cover C1"]},
        {
          "because": [{"formula": 8, "values": ["slope", 26.565051177, 6]}, {"formula": 8, "values": ["other slope", 26.565051177, 6]}],
          "formula": 9,
          "values": [
            1,
            "Wing on the plane of the run",
            "Wing on the other plane",
            53.130102354,
            126.869897646,
            -53.130102354,
            0,
            "slope",
            26.565051177,
            "other slope",
            26.565051177
          ]
        },
        {"formula": 10, "values": [101.6]},
        {"formula": 11, "values": [1.857, 328.867958, 5.6453, "24 ga", "Galvanised steel"]}
      ],
      "girth_mm": 328.867958,
      "id": "P1",
      "kilograms_per_metre": 1.8565582832974,
      "material": {"colour": "Slate", "gauge": "24 ga", "metal": "galvanised-steel"},
      "profile": {
        "bends": [{"inside_radius_mm": 0.70104, "turn_degrees": -53.130102354}],
        "colour_face": "left",
        "end_hem": {"flat_mm": 12.7, "inside_radius_mm": 0, "kind": "closed", "side": "right"},
        "first_direction_degrees": 26.565051177,
        "legs": [{"length_mm": 152.4, "name": "first_wing"}, {"length_mm": 152.4, "name": "second_wing"}],
        "name": "Ridge cap",
        "start_hem": {"flat_mm": 12.7, "inside_radius_mm": 0, "kind": "closed", "side": "right"},
        "start_x_mm": -136.310704,
        "start_y_mm": -68.155352,
        "trim": "ridge-cap"
      },
      "thickness_mm": 0.70104
    }
  ],
  "revision": 1,
  "runs": [
    {
      "derivations": [
        {"because": [{"formula": 12, "values": [4876.8, "16''"]}], "formula": 13, "values": [4876.8, 4876.8]},
        {"formula": 14, "values": [2, "as full lengths and the rest", 4876.8, 101.6, 3200.4, 1.55, 4978.4]}
      ],
      "mark": "R1",
      "piece_count": 2,
      "piece_limit_mm": 3200.4,
      "profile": 0,
      "run": "R1",
      "trim": "ridge-cap",
      "usable_length_mm": 4876.8
    }
  ]
}
','{"format":"lapwright/order","version":1,"program":"0.1.0","accessories":[{"count":34,"derivation":{"formula":15,"values":[34,2,304.8,4876.8]},"name":"fastener","run":"R1","trim":"ridge-cap"},{"count":1,"derivation":{"formula":16,"values":[1,328.867958,1,0]},"length_mm":328.867958,"name":"sealant","run":"R1","trim":"ridge-cap"}],"formulas":[{"text":"{line}, {angle} pressed flat: takes up {deduction} = 2 × setback {setback} − allowance {allowance}","values":[{"name":"line","type":"text"},{"name":"angle","type":"degrees"},{"name":"radius","type":"text"},{"name":"deduction","type":"text"},{"name":"setback","type":"text"},{"name":"allowance","type":"text"}]},{"text":"{line}, {angle} over an inside radius of {radius}: takes up {deduction} = 2 × setback {setback} − allowance {allowance}","values":[{"name":"line","type":"text"},{"name":"angle","type":"degrees"},{"name":"radius","type":"text"},{"name":"deduction","type":"text"},{"name":"setback","type":"text"},{"name":"allowance","type":"text"}]},{"text":"setback = tan(half the fold angle) × (inside radius + thickness); of a hem''s edge inside radius + thickness"},{"source":"Kalpakjian and Schmid, Manufacturing Engineering and Technology, 6th edition in SI units, p. 418, eq. 16.2","text":"allowance = fold angle in radians × (inside radius + K × thickness)"},{"text":"thickness {thickness}: {gauge} {metal}","values":[{"name":"thickness","type":"text"},{"name":"gauge","type":"text"},{"name":"metal","type":"text"}]},{"source":"Default of 0.44: common practice, no source. Beside it: FAA-H-8083-31 bend allowance (0.01743 R + 0.0078 T) per degree is K 0.447.","text":"K {k} is kept with the metal {metal}","values":[{"name":"k","type":"number"},{"name":"metal","type":"text"}]},{"text":"girth {girth}, exactly {fine} = outside legs {legs} + hems {hems} − what the bends take up {deductions}","values":[{"name":"girth","type":"mm"},{"name":"fine","type":"text"},{"name":"legs","type":"mm"},{"name":"hems","type":"mm"},{"name":"deductions","type":"text"}]},{"source":"New Zealand Metal Roof and Wall Cladding Code of Practice v3, flashing cover (metalroofing.org.nz): ridge cover at least 130 mm in the lightest case","text":"{leg} {length}, as the trim has it; at least {least} by {rule}","values":[{"name":"leg","type":"text"},{"name":"length","type":"mm"},{"name":"constant","type":"mm"},{"name":"least","type":"mm"},{"name":"rule","type":"text"}]},{"text":"{slope} {angle} is {rise} in 12","values":[{"name":"slope","type":"text"},{"name":"angle","type":"degrees"},{"name":"rise","type":"number"}]},{"text":"bend {number}, {before} to {after}: folded {fold}, which leaves {included} between them; turn {turn} = −{measure1} {value1} − {measure2} {value2}","values":[{"name":"number","type":"count"},{"name":"before","type":"text"},{"name":"after","type":"text"},{"name":"fold","type":"degrees"},{"name":"included","type":"degrees"},{"name":"turn","type":"degrees"},{"name":"constant","type":"degrees"},{"name":"measure1","type":"text"},{"name":"value1","type":"degrees"},{"name":"measure2","type":"text"},{"name":"value2","type":"degrees"}]},{"source":"New Zealand Metal Roof and Wall Cladding Code of Practice v3, flashing laps: at least 100 mm sealed","text":"each piece laps the one before by {lap}","values":[{"name":"lap","type":"mm"}]},{"text":"{mass} kg per metre: girth {girth} × {surface} kg per square metre of {gauge} {metal}","values":[{"name":"mass","type":"number"},{"name":"girth","type":"mm"},{"name":"surface","type":"number"},{"name":"gauge","type":"text"},{"name":"metal","type":"text"}]},{"text":"{length} as measured, entered as {entered}","values":[{"name":"length","type":"mm"},{"name":"entered","type":"text"}]},{"text":"{usable} to cover","values":[{"name":"usable","type":"mm"},{"name":"measured","type":"mm"}]},{"text":"{count} pieces, {policy}: ({length} − lap {lap}) / (longest piece {limit} − lap {lap}) = {parts}, rounded up; with their laps they are {total} together","values":[{"name":"count","type":"count"},{"name":"policy","type":"text"},{"name":"length","type":"mm"},{"name":"lap","type":"mm"},{"name":"limit","type":"mm"},{"name":"parts","type":"number"},{"name":"total","type":"mm"}]},{"source":"common practice, no source","text":"{count} fasteners in {rows} rows, at most {spacing} apart on {length}, both ends too","values":[{"name":"count","type":"count"},{"name":"rows","type":"count"},{"name":"spacing","type":"mm"},{"name":"length","type":"mm"}]},{"text":"sealant: {beads} × the girth of {girth}, a bead at each lap ({laps}) and each mitre ({corners})","values":[{"name":"beads","type":"count"},{"name":"girth","type":"mm"},{"name":"laps","type":"count"},{"name":"corners","type":"count"}]}],"id":"9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77","job":{"address":"1 Invented Lane","chains":[{"id":"ridge","name":"Ridge","runs":[{"id":"R1","kind":"ridge","lengths":[{"entered":"16''","mm":4876.8}],"note":"second revision","other_slope":{"rise":6,"run":12},"slope":{"rise":6,"run":12},"trims":[{"trim":"ridge-cap"}]}]}],"customer":"Invented customer","id":"9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77","material":{"colour":"Slate","gauge":"24 ga","metal":"galvanised-steel"},"name":"Second house","rule_sets":["irc-flashing"],"wanted_by":"2026-03-01"},"pieces":[{"blank_length_mm":3200.4,"length_mm":3200.4,"mark":"R1.1","profile":0,"run":"R1"},{"blank_length_mm":1778,"length_mm":1778,"mark":"R1.2","profile":0,"run":"R1","start":{"allowance_mm":101.6,"kind":"lap"}}],"profiles":[{"derivations":[{"because":[{"formula":0,"values":["start hem edge",180,"0.0000\" (0.00 mm)","0.0170\" (0.43 mm)","0.0276\" (0.70 mm)","0.0382\" (0.97 mm)"]},{"formula":1,"values":["bend 1",53.130102354,"0.0276\" (0.70 mm)","0.0183\" (0.47 mm)","0.0276\" (0.70 mm)","0.0369\" (0.94 mm)"]},{"formula":0,"values":["end hem edge",180,"0.0000\" (0.00 mm)","0.0170\" (0.43 mm)","0.0276\" (0.70 mm)","0.0382\" (0.97 mm)"]},{"formula":2},{"formula":3},{"formula":4,"values":["0.0276\" (0.70 mm)","24 ga","Galvanised steel"]},{"formula":5,"values":[0.44,"Galvanised steel"]}],"formula":6,"values":[328.867958,"12.9476\" (328.87 mm)",304.8,25.4,"0.0524\" (1.33 mm)"]},{"formula":7,"values":["Wing on the plane of the run",152.4,152.4,130,"Code of Practice v3, cover C1"]},{"formula":7,"values":["Wing on the other plane",152.4,152.4,130,"Code of Practice v3, cover C1"]},{"because":[{"formula":8,"values":["slope",26.565051177,6]},{"formula":8,"values":["other slope",26.565051177,6]}],"formula":9,"values":[1,"Wing on the plane of the run","Wing on the other plane",53.130102354,126.869897646,-53.130102354,0,"slope",26.565051177,"other slope",26.565051177]},{"formula":10,"values":[101.6]},{"formula":11,"values":[1.857,328.867958,5.6453,"24 ga","Galvanised steel"]}],"girth_mm":328.867958,"id":"P1","kilograms_per_metre":1.8565582832974,"material":{"colour":"Slate","gauge":"24 ga","metal":"galvanised-steel"},"profile":{"bends":[{"inside_radius_mm":0.70104,"turn_degrees":-53.130102354}],"colour_face":"left","end_hem":{"flat_mm":12.7,"inside_radius_mm":0,"kind":"closed","side":"right"},"first_direction_degrees":26.565051177,"legs":[{"length_mm":152.4,"name":"first_wing"},{"length_mm":152.4,"name":"second_wing"}],"name":"Ridge cap","start_hem":{"flat_mm":12.7,"inside_radius_mm":0,"kind":"closed","side":"right"},"start_x_mm":-136.310704,"start_y_mm":-68.155352,"trim":"ridge-cap"},"thickness_mm":0.70104}],"revision":1,"runs":[{"derivations":[{"because":[{"formula":12,"values":[4876.8,"16''"]}],"formula":13,"values":[4876.8,4876.8]},{"formula":14,"values":[2,"as full lengths and the rest",4876.8,101.6,3200.4,1.55,4978.4]}],"mark":"R1","piece_count":2,"piece_limit_mm":3200.4,"profile":0,"run":"R1","trim":"ridge-cap","usable_length_mm":4876.8}]}');
INSERT INTO "orders" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002',1,'41c4de5b5416054ba2842a8c6bd2bf05173aba07622a84b3ca67c0826b915ca9','','Birch House','Invented customer','2026-12-10','2026-11-26T14:36:42Z','{
  "format": "lapwright/order",
  "version": 1,
  "program": "0.1.0",
  "accessories": [
    {"count": 41, "derivation": {"formula": 22, "values": [41, 1, 304.8, 12192]}, "name": "fastener", "run": "E1", "trim": "eave-drip-edge"},
    {"count": 25, "derivation": {"formula": 22, "values": [25, 1, 304.8, 7315.2]}, "name": "fastener", "run": "E2", "trim": "eave-drip-edge"},
    {"count": 41, "derivation": {"formula": 22, "values": [41, 1, 304.8, 12192]}, "name": "fastener", "run": "E3", "trim": "eave-drip-edge"},
    {"count": 25, "derivation": {"formula": 22, "values": [25, 1, 304.8, 7315.2]}, "name": "fastener", "run": "E4", "trim": "eave-drip-edge"},
    {"count": 34, "derivation": {"formula": 23, "values": [34, 2, 304.8, 4876.8]}, "name": "fastener", "run": "R1", "trim": "ridge-cap"},
    {"count": 1, "derivation": {"formula": 24, "values": [1, 328.867958, 1, 0]}, "length_mm": 328.867958, "name": "sealant", "run": "R1", "trim": "ridge-cap"}
  ],
  "findings": [
    {
      "code": "site.closure.closes",
      "place": "chain House eave",
      "statement": {"text": "the chain closes exactly, {perimeter} around", "values": [{"mm": 39014.4, "name": "perimeter"}]},
      "weight": "informs"
    }
  ],
  "formulas": [
    {
      "text": "{line}, {angle} over an inside radius of {radius}: takes up {deduction} = 2 × setback {setback} − allowance {allowance}",
      "values": [
        {"name": "line", "type": "text"},
        {"name": "angle", "type": "degrees"},
        {"name": "radius", "type": "text"},
        {"name": "deduction", "type": "text"},
        {"name": "setback", "type": "text"},
        {"name": "allowance", "type": "text"}
      ]
    },
    {
      "text": "{line}, {angle} pressed flat: takes up {deduction} = 2 × setback {setback} − allowance {allowance}",
      "values": [
        {"name": "line", "type": "text"},
        {"name": "angle", "type": "degrees"},
        {"name": "radius", "type": "text"},
        {"name": "deduction", "type": "text"},
        {"name": "setback", "type": "text"},
        {"name": "allowance", "type": "text"}
      ]
    },
    {"text": "setback = tan(half the fold angle) × (inside radius + thickness); of a hem''s edge inside radius + thickness"},
    {
      "source": "Kalpakjian and Schmid, Manufacturing Engineering and Technology, 6th edition in SI units, p. 418, eq. 16.2",
      "text": "allowance = fold angle in radians × (inside radius + K × thickness)"
    },
    {
      "text": "thickness {thickness}: {gauge} {metal}",
      "values": [{"name": "thickness", "type": "text"}, {"name": "gauge", "type": "text"}, {"name": "metal", "type": "text"}]
    },
    {
      "source": "Default of 0.44: common practice, no source. Beside it: FAA-H-8083-31 bend allowance (0.01743 R + 0.0078 T) per degree is K 0.447.",
      "text": "K {k} is kept with the metal {metal}",
      "values": [{"name": "k", "type": "number"}, {"name": "metal", "type": "text"}]
    },
    {
      "text": "girth {girth}, exactly {fine} = outside legs {legs} + hems {hems} − what the bends take up {deductions}",
      "values": [
        {"name": "girth", "type": "mm"},
        {"name": "fine", "type": "text"},
        {"name": "legs", "type": "mm"},
        {"name": "hems", "type": "mm"},
        {"name": "deductions", "type": "text"}
      ]
    },
    {
      "source": "International Residential Code 2015, R905.2.8.5 (read at inspect2code.com): drip edge at least 2 in up the deck, laps at least 2 in, fastened at 12 in at most",
      "text": "{leg} {length}, as the trim has it; at least {least} by {rule}",
      "values": [
        {"name": "leg", "type": "text"},
        {"name": "length", "type": "mm"},
        {"name": "constant", "type": "mm"},
        {"name": "least", "type": "mm"},
        {"name": "rule", "type": "text"}
      ]
    },
    {"text": "{measure} {value}, by default", "values": [{"name": "measure", "type": "text"}, {"name": "value", "type": "mm"}]},
    {
      "source": "International Building Code, 1507.2.8.3 (quoted in Professional Roofing, June 2019): vertical face of a drip edge at least 1-1/2 in",
      "text": "{leg} {length} = {measure1} {value1}, rounded up to a multiple of {step}; at least {least} by {rule}",
      "values": [
        {"name": "leg", "type": "text"},
        {"name": "length", "type": "mm"},
        {"name": "constant", "type": "mm"},
        {"name": "measure1", "type": "text"},
        {"name": "value1", "type": "mm"},
        {"name": "step", "type": "mm"},
        {"name": "least", "type": "mm"},
        {"name": "rule", "type": "text"}
      ]
    },
    {
      "source": "common practice, no source",
      "text": "{leg} {length}, as the trim has it",
      "values": [{"name": "leg", "type": "text"}, {"name": "length", "type": "mm"}, {"name": "constant", "type": "mm"}]
    },
    {
      "text": "{slope} {angle} is {rise} in 12",
      "values": [{"name": "slope", "type": "text"}, {"name": "angle", "type": "degrees"}, {"name": "rise", "type": "number"}]
    },
    {
      "text": "bend {number}, {before} to {after}: folded {fold}, which leaves {included} between them; turn {turn} = {constant} + {measure1} {value1}",
      "values": [
        {"name": "number", "type": "count"},
        {"name": "before", "type": "text"},
        {"name": "after", "type": "text"},
        {"name": "fold", "type": "degrees"},
        {"name": "included", "type": "degrees"},
        {"name": "turn", "type": "degrees"},
        {"name": "constant", "type": "degrees"},
        {"name": "measure1", "type": "text"},
        {"name": "value1", "type": "degrees"}
      ]
    },
    {
      "source": "UFGS 07600, 3.1.15: drip angle at most 45 degrees",
      "text": "bend {number}, {before} to {after}: folded {fold}, which leaves {included} between them; the trim has it so",
      "values": [
        {"name": "number", "type": "count"},
        {"name": "before", "type": "text"},
        {"name": "after", "type": "text"},
        {"name": "fold", "type": "degrees"},
        {"name": "included", "type": "degrees"},
        {"name": "turn", "type": "degrees"},
        {"name": "constant", "type": "degrees"}
      ]
    },
    {
      "source": "International Residential Code 2015, R905.2.8.5 (read at inspect2code.com): drip edge at least 2 in up the deck, laps at least 2 in, fastened at 12 in at most",
      "text": "each piece laps the one before by {lap}",
      "values": [{"name": "lap", "type": "mm"}]
    },
    {
      "text": "{mass} kg per metre: girth {girth} × {surface} kg per square metre of {gauge} {metal}",
      "values": [
        {"name": "mass", "type": "number"},
        {"name": "girth", "type": "mm"},
        {"name": "surface", "type": "number"},
        {"name": "gauge", "type": "text"},
        {"name": "metal", "type": "text"}
      ]
    },
    {
      "source": "New Zealand Metal Roof and Wall Cladding Code of Practice v3, flashing cover (metalroofing.org.nz): ridge cover at least 130 mm in the lightest case",
      "text": "{leg} {length}, as the trim has it; at least {least} by {rule}",
      "values": [
        {"name": "leg", "type": "text"},
        {"name": "length", "type": "mm"},
        {"name": "constant", "type": "mm"},
        {"name": "least", "type": "mm"},
        {"name": "rule", "type": "text"}
      ]
    },
    {
      "text": "bend {number}, {before} to {after}: folded {fold}, which leaves {included} between them; turn {turn} = −{measure1} {value1} − {measure2} {value2}",
      "values": [
        {"name": "number", "type": "count"},
        {"name": "before", "type": "text"},
        {"name": "after", "type": "text"},
        {"name": "fold", "type": "degrees"},
        {"name": "included", "type": "degrees"},
        {"name": "turn", "type": "degrees"},
        {"name": "constant", "type": "degrees"},
        {"name": "measure1", "type": "text"},
        {"name": "value1", "type": "degrees"},
        {"name": "measure2", "type": "text"},
        {"name": "value2", "type": "degrees"}
      ]
    },
    {
      "source": "New Zealand Metal Roof and Wall Cladding Code of Practice v3, flashing laps: at least 100 mm sealed",
      "text": "each piece laps the one before by {lap}",
      "values": [{"name": "lap", "type": "mm"}]
    },
    {"text": "{length} as measured, entered as {entered}", "values": [{"name": "length", "type": "mm"}, {"name": "entered", "type": "text"}]},
    {"text": "{usable} to cover", "values": [{"name": "usable", "type": "mm"}, {"name": "measured", "type": "mm"}]},
    {
      "text": "{count} pieces, {policy}: ({length} − lap {lap}) / (longest piece {limit} − lap {lap}) = {parts}, rounded up; with their laps they are {total} together",
      "values": [
        {"name": "count", "type": "count"},
        {"name": "policy", "type": "text"},
        {"name": "length", "type": "mm"},
        {"name": "lap", "type": "mm"},
        {"name": "limit", "type": "mm"},
        {"name": "parts", "type": "number"},
        {"name": "total", "type": "mm"}
      ]
    },
    {
      "source": "IRC R905.2.8.5: at most 12 in",
      "text": "{count} fasteners, at most {spacing} apart on {length}, both ends too",
      "values": [{"name": "count", "type": "count"}, {"name": "rows", "type": "count"}, {"name": "spacing", "type": "mm"}, {"name": "length", "type": "mm"}]
    },
    {
      "source": "common practice, no source",
      "text": "{count} fasteners in {rows} rows, at most {spacing} apart on {length}, both ends too",
      "values": [{"name": "count", "type": "count"}, {"name": "rows", "type": "count"}, {"name": "spacing", "type": "mm"}, {"name": "length", "type": "mm"}]
    },
    {
      "text": "sealant: {beads} × the girth of {girth}, a bead at each lap ({laps}) and each mitre ({corners})",
      "values": [{"name": "beads", "type": "count"}, {"name": "girth", "type": "mm"}, {"name": "laps", "type": "count"}, {"name": "corners", "type": "count"}]
    }
  ],
  "id": "0b54c3f4-1a2b-4c3d-8e4f-000000000002",
  "job": {
    "address": "1 Invented Lane",
    "chains": [
      {
        "closed": true,
        "corners": [{"kind": "square_outside"}, {"kind": "square_outside"}, {"kind": "square_outside"}, {"kind": "square_outside"}],
        "id": "eave",
        "name": "House eave",
        "runs": [
          {"id": "E1", "kind": "eave", "lengths": [{"entered": "40''", "mm": 12192}], "slope": {"rise": 6, "run": 12}, "trims": [{"trim": "eave-drip-edge"}]},
          {"id": "E2", "kind": "eave", "lengths": [{"entered": "24''", "mm": 7315.2}], "slope": {"rise": 6, "run": 12}, "trims": [{"trim": "eave-drip-edge"}]},
          {"id": "E3", "kind": "eave", "lengths": [{"entered": "40''", "mm": 12192}], "slope": {"rise": 6, "run": 12}, "trims": [{"trim": "eave-drip-edge"}]},
          {"id": "E4", "kind": "eave", "lengths": [{"entered": "24''", "mm": 7315.2}], "slope": {"rise": 6, "run": 12}, "trims": [{"trim": "eave-drip-edge"}]}
        ]
      },
      {
        "corners": [],
        "id": "ridge",
        "name": "Ridge",
        "runs": [
          {
            "id": "R1",
            "kind": "ridge",
            "lengths": [{"entered": "16''", "mm": 4876.8}],
            "other_slope": {"rise": 6, "run": 12},
            "slope": {"rise": 6, "run": 12},
            "trims": [{"trim": "ridge-cap"}]
          }
        ]
      }
    ],
    "customer": "Invented customer",
    "id": "0b54c3f4-1a2b-4c3d-8e4f-000000000002",
    "material": {"colour": "Slate", "gauge": "24 ga", "metal": "galvanised-steel"},
    "name": "Birch House",
    "rule_sets": ["irc-flashing"],
    "wanted_by": "2026-12-10"
  },
  "pieces": [
    {"blank_length_mm": 3200.4, "length_mm": 3200.4, "mark": "E1.1", "profile": 0, "run": "E1"},
    {"blank_length_mm": 3200.4, "length_mm": 3200.4, "mark": "E1.2", "profile": 0, "run": "E1", "start": {"allowance_mm": 50.8, "kind": "lap"}},
    {"blank_length_mm": 3200.4, "length_mm": 3200.4, "mark": "E1.3", "profile": 0, "run": "E1", "start": {"allowance_mm": 50.8, "kind": "lap"}},
    {"blank_length_mm": 2743.2, "length_mm": 2743.2, "mark": "E1.4", "profile": 0, "run": "E1", "start": {"allowance_mm": 50.8, "kind": "lap"}},
    {"blank_length_mm": 3200.4, "length_mm": 3200.4, "mark": "E2.1", "profile": 0, "run": "E2"},
    {"blank_length_mm": 3200.4, "length_mm": 3200.4, "mark": "E2.2", "profile": 0, "run": "E2", "start": {"allowance_mm": 50.8, "kind": "lap"}},
    {"blank_length_mm": 1016, "length_mm": 1016, "mark": "E2.3", "profile": 0, "run": "E2", "start": {"allowance_mm": 50.8, "kind": "lap"}},
    {"blank_length_mm": 3200.4, "length_mm": 3200.4, "mark": "E3.1", "profile": 0, "run": "E3"},
    {"blank_length_mm": 3200.4, "length_mm": 3200.4, "mark": "E3.2", "profile": 0, "run": "E3", "start": {"allowance_mm": 50.8, "kind": "lap"}},
    {"blank_length_mm": 3200.4, "length_mm": 3200.4, "mark": "E3.3", "profile": 0, "run": "E3", "start": {"allowance_mm": 50.8, "kind": "lap"}},
    {"blank_length_mm": 2743.2, "length_mm": 2743.2, "mark": "E3.4", "profile": 0, "run": "E3", "start": {"allowance_mm": 50.8, "kind": "lap"}},
    {"blank_length_mm": 3200.4, "length_mm": 3200.4, "mark": "E4.1", "profile": 0, "run": "E4"},
    {"blank_length_mm": 3200.4, "length_mm": 3200.4, "mark": "E4.2", "profile": 0, "run": "E4", "start": {"allowance_mm": 50.8, "kind": "lap"}},
    {"blank_length_mm": 1016, "length_mm": 1016, "mark": "E4.3", "profile": 0, "run": "E4", "start": {"allowance_mm": 50.8, "kind": "lap"}},
    {"blank_length_mm": 3200.4, "length_mm": 3200.4, "mark": "R1.1", "profile": 1, "run": "R1"},
    {"blank_length_mm": 1778, "length_mm": 1778, "mark": "R1.2", "profile": 1, "run": "R1", "start": {"allowance_mm": 101.6, "kind": "lap"}}
  ],
  "profiles": [
    {
      "derivations": [
        {
          "because": [
            {"formula": 0, "values": ["bend 1", 63.434948823, "0.0276\" (0.70 mm)", "0.0242\" (0.62 mm)", "0.0341\" (0.87 mm)", "0.0440\" (1.12 mm)"]},
            {"formula": 0, "values": ["bend 2", 35, "0.0276\" (0.70 mm)", "0.0105\" (0.27 mm)", "0.0174\" (0.44 mm)", "0.0243\" (0.62 mm)"]},
            {"formula": 1, "values": ["end hem edge", 180, "0.0000\" (0.00 mm)", "0.0170\" (0.43 mm)", "0.0276\" (0.70 mm)", "0.0382\" (0.97 mm)"]},
            {"formula": 2},
            {"formula": 3},
            {"formula": 4, "values": ["0.0276\" (0.70 mm)", "24 ga", "Galvanised steel"]},
            {"formula": 5, "values": [0.44, "Galvanised steel"]}
          ],
          "formula": 6,
          "values": [135.209085, "5.3232\" (135.21 mm)", 127, 9.525, "0.0518\" (1.32 mm)"]
        },
        {"formula": 7, "values": ["Deck flange", 63.5, 63.5, 50.8, "IRC R905.2.8.5"]},
        {
          "because": [{"formula": 8, "values": ["Height of the face", 50.8]}],
          "formula": 9,
          "values": ["Face", 50.8, 0, "Height of the face", 50.8, 1.5875, 38.1, "IBC 1507.2.8.3"]
        },
        {"formula": 10, "values": ["Kick", 12.7, 12.7]},
        {
          "because": [{"formula": 11, "values": ["slope", 26.565051177, 6]}],
          "formula": 12,
          "values": [1, "Deck flange", "Face", 63.434948823, 116.565051177, -63.434948823, -90, "slope", 26.565051177]
        },
        {"formula": 13, "values": [2, "Face", "Kick", 35, 145, 35, 35]},
        {"formula": 14, "values": [50.8]},
        {"formula": 15, "values": [0.763, 135.209085, 5.6453, "24 ga", "Galvanised steel"]}
      ],
      "girth_mm": 135.209085,
      "id": "P1",
      "kilograms_per_metre": 0.7632958475505,
      "material": {"colour": "Slate", "gauge": "24 ga", "metal": "galvanised-steel"},
      "profile": {
        "bends": [{"inside_radius_mm": 0.70104, "turn_degrees": -63.434948823}, {"inside_radius_mm": 0.70104, "turn_degrees": 35}],
        "colour_face": "left",
        "end_hem": {"flat_mm": 9.525, "inside_radius_mm": 0, "kind": "closed", "side": "right"},
        "first_direction_degrees": -26.565051177,
        "legs": [{"length_mm": 63.5, "name": "deck"}, {"length_mm": 50.8, "name": "face"}, {"length_mm": 12.7, "name": "kick"}],
        "name": "Eave drip edge",
        "start_x_mm": -56.796127,
        "start_y_mm": 28.398063,
        "trim": "eave-drip-edge"
      },
      "thickness_mm": 0.70104
    },
    {
      "derivations": [
        {
          "because": [
            {"formula": 1, "values": ["start hem edge", 180, "0.0000\" (0.00 mm)", "0.0170\" (0.43 mm)", "0.0276\" (0.70 mm)", "0.0382\" (0.97 mm)"]},
            {"formula": 0, "values": ["bend 1", 53.130102354, "0.0276\" (0.70 mm)", "0.0183\" (0.47 mm)", "0.0276\" (0.70 mm)", "0.0369\" (0.94 mm)"]},
            {"formula": 1, "values": ["end hem edge", 180, "0.0000\" (0.00 mm)", "0.0170\" (0.43 mm)", "0.0276\" (0.70 mm)", "0.0382\" (0.97 mm)"]},
            {"formula": 2},
            {"formula": 3},
            {"formula": 4, "values": ["0.0276\" (0.70 mm)", "24 ga", "Galvanised steel"]},
            {"formula": 5, "values": [0.44, "Galvanised steel"]}
          ],
          "formula": 6,
          "values": [328.867958, "12.9476\" (328.87 mm)", 304.8, 25.4, "0.0524\" (1.33 mm)"]
        },
        {"formula": 16, "values": ["Wing on the plane of the run", 152.4, 152.4, 130, "Code of Practice v3, cover C1"]},
        {"formula": 16, "values": ["Wing on the other plane", 152.4, 152.4, 130, "Code of Practice v3, cover C1"]},
        {
          "because": [{"formula": 11, "values": ["slope", 26.565051177, 6]}, {"formula": 11, "values": ["other slope", 26.565051177, 6]}],
          "formula": 17,
          "values": [
            1,
            "Wing on the plane of the run",
            "Wing on the other plane",
            53.130102354,
            126.869897646,
            -53.130102354,
            0,
            "slope",
            26.565051177,
            "other slope",
            26.565051177
          ]
        },
        {"formula": 18, "values": [101.6]},
        {"formula": 15, "values": [1.857, 328.867958, 5.6453, "24 ga", "Galvanised steel"]}
      ],
      "girth_mm": 328.867958,
      "id": "P2",
      "kilograms_per_metre": 1.8565582832974,
      "material": {"colour": "Slate", "gauge": "24 ga", "metal": "galvanised-steel"},
      "profile": {
        "bends": [{"inside_radius_mm": 0.70104, "turn_degrees": -53.130102354}],
        "colour_face": "left",
        "end_hem": {"flat_mm": 12.7, "inside_radius_mm": 0, "kind": "closed", "side": "right"},
        "first_direction_degrees": 26.565051177,
        "legs": [{"length_mm": 152.4, "name": "first_wing"}, {"length_mm": 152.4, "name": "second_wing"}],
        "name": "Ridge cap",
        "start_hem": {"flat_mm": 12.7, "inside_radius_mm": 0, "kind": "closed", "side": "right"},
        "start_x_mm": -136.310704,
        "start_y_mm": -68.155352,
        "trim": "ridge-cap"
      },
      "thickness_mm": 0.70104
    }
  ],
  "revision": 1,
  "runs": [
    {
      "derivations": [
        {"because": [{"formula": 19, "values": [12192, "40''"]}], "formula": 20, "values": [12192, 12192]},
        {"formula": 21, "values": [4, "as full lengths and the rest", 12192, 50.8, 3200.4, 3.86, 12344.4]}
      ],
      "mark": "E1",
      "piece_count": 4,
      "piece_limit_mm": 3200.4,
      "profile": 0,
      "run": "E1",
      "trim": "eave-drip-edge",
      "usable_length_mm": 12192
    },
    {
      "derivations": [
        {"because": [{"formula": 19, "values": [7315.2, "24''"]}], "formula": 20, "values": [7315.2, 7315.2]},
        {"formula": 21, "values": [3, "as full lengths and the rest", 7315.2, 50.8, 3200.4, 2.31, 7416.8]}
      ],
      "first_piece": 4,
      "mark": "E2",
      "piece_count": 3,
      "piece_limit_mm": 3200.4,
      "profile": 0,
      "run": "E2",
      "trim": "eave-drip-edge",
      "usable_length_mm": 7315.2
    },
    {
      "derivations": [
        {"because": [{"formula": 19, "values": [12192, "40''"]}], "formula": 20, "values": [12192, 12192]},
        {"formula": 21, "values": [4, "as full lengths and the rest", 12192, 50.8, 3200.4, 3.86, 12344.4]}
      ],
      "first_piece": 7,
      "mark": "E3",
      "piece_count": 4,
      "piece_limit_mm": 3200.4,
      "profile": 0,
      "run": "E3",
      "trim": "eave-drip-edge",
      "usable_length_mm": 12192
    },
    {
      "derivations": [
        {"because": [{"formula": 19, "values": [7315.2, "24''"]}], "formula": 20, "values": [7315.2, 7315.2]},
        {"formula": 21, "values": [3, "as full lengths and the rest", 7315.2, 50.8, 3200.4, 2.31, 7416.8]}
      ],
      "first_piece": 11,
      "mark": "E4",
      "piece_count": 3,
      "piece_limit_mm": 3200.4,
      "profile": 0,
      "run": "E4",
      "trim": "eave-drip-edge",
      "usable_length_mm": 7315.2
    },
    {
      "derivations": [
        {"because": [{"formula": 19, "values": [4876.8, "16''"]}], "formula": 20, "values": [4876.8, 4876.8]},
        {"formula": 21, "values": [2, "as full lengths and the rest", 4876.8, 101.6, 3200.4, 1.55, 4978.4]}
      ],
      "first_piece": 14,
      "mark": "R1",
      "piece_count": 2,
      "piece_limit_mm": 3200.4,
      "profile": 1,
      "run": "R1",
      "trim": "ridge-cap",
      "usable_length_mm": 4876.8
    }
  ]
}
','{"format":"lapwright/order","version":1,"program":"0.1.0","accessories":[{"count":41,"derivation":{"formula":22,"values":[41,1,304.8,12192]},"name":"fastener","run":"E1","trim":"eave-drip-edge"},{"count":25,"derivation":{"formula":22,"values":[25,1,304.8,7315.2]},"name":"fastener","run":"E2","trim":"eave-drip-edge"},{"count":41,"derivation":{"formula":22,"values":[41,1,304.8,12192]},"name":"fastener","run":"E3","trim":"eave-drip-edge"},{"count":25,"derivation":{"formula":22,"values":[25,1,304.8,7315.2]},"name":"fastener","run":"E4","trim":"eave-drip-edge"},{"count":34,"derivation":{"formula":23,"values":[34,2,304.8,4876.8]},"name":"fastener","run":"R1","trim":"ridge-cap"},{"count":1,"derivation":{"formula":24,"values":[1,328.867958,1,0]},"length_mm":328.867958,"name":"sealant","run":"R1","trim":"ridge-cap"}],"findings":[{"code":"site.closure.closes","place":"chain House eave","statement":{"text":"the chain closes exactly, {perimeter} around","values":[{"mm":39014.4,"name":"perimeter"}]},"weight":"informs"}],"formulas":[{"text":"{line}, {angle} over an inside radius of {radius}: takes up {deduction} = 2 × setback {setback} − allowance {allowance}","values":[{"name":"line","type":"text"},{"name":"angle","type":"degrees"},{"name":"radius","type":"text"},{"name":"deduction","type":"text"},{"name":"setback","type":"text"},{"name":"allowance","type":"text"}]},{"text":"{line}, {angle} pressed flat: takes up {deduction} = 2 × setback {setback} − allowance {allowance}","values":[{"name":"line","type":"text"},{"name":"angle","type":"degrees"},{"name":"radius","type":"text"},{"name":"deduction","type":"text"},{"name":"setback","type":"text"},{"name":"allowance","type":"text"}]},{"text":"setback = tan(half the fold angle) × (inside radius + thickness); of a hem''s edge inside radius + thickness"},{"source":"Kalpakjian and Schmid, Manufacturing Engineering and Technology, 6th edition in SI units, p. 418, eq. 16.2","text":"allowance = fold angle in radians × (inside radius + K × thickness)"},{"text":"thickness {thickness}: {gauge} {metal}","values":[{"name":"thickness","type":"text"},{"name":"gauge","type":"text"},{"name":"metal","type":"text"}]},{"source":"Default of 0.44: common practice, no source. Beside it: FAA-H-8083-31 bend allowance (0.01743 R + 0.0078 T) per degree is K 0.447.","text":"K {k} is kept with the metal {metal}","values":[{"name":"k","type":"number"},{"name":"metal","type":"text"}]},{"text":"girth {girth}, exactly {fine} = outside legs {legs} + hems {hems} − what the bends take up {deductions}","values":[{"name":"girth","type":"mm"},{"name":"fine","type":"text"},{"name":"legs","type":"mm"},{"name":"hems","type":"mm"},{"name":"deductions","type":"text"}]},{"source":"International Residential Code 2015, R905.2.8.5 (read at inspect2code.com): drip edge at least 2 in up the deck, laps at least 2 in, fastened at 12 in at most","text":"{leg} {length}, as the trim has it; at least {least} by {rule}","values":[{"name":"leg","type":"text"},{"name":"length","type":"mm"},{"name":"constant","type":"mm"},{"name":"least","type":"mm"},{"name":"rule","type":"text"}]},{"text":"{measure} {value}, by default","values":[{"name":"measure","type":"text"},{"name":"value","type":"mm"}]},{"source":"International Building Code, 1507.2.8.3 (quoted in Professional Roofing, June 2019): vertical face of a drip edge at least 1-1/2 in","text":"{leg} {length} = {measure1} {value1}, rounded up to a multiple of {step}; at least {least} by {rule}","values":[{"name":"leg","type":"text"},{"name":"length","type":"mm"},{"name":"constant","type":"mm"},{"name":"measure1","type":"text"},{"name":"value1","type":"mm"},{"name":"step","type":"mm"},{"name":"least","type":"mm"},{"name":"rule","type":"text"}]},{"source":"common practice, no source","text":"{leg} {length}, as the trim has it","values":[{"name":"leg","type":"text"},{"name":"length","type":"mm"},{"name":"constant","type":"mm"}]},{"text":"{slope} {angle} is {rise} in 12","values":[{"name":"slope","type":"text"},{"name":"angle","type":"degrees"},{"name":"rise","type":"number"}]},{"text":"bend {number}, {before} to {after}: folded {fold}, which leaves {included} between them; turn {turn} = {constant} + {measure1} {value1}","values":[{"name":"number","type":"count"},{"name":"before","type":"text"},{"name":"after","type":"text"},{"name":"fold","type":"degrees"},{"name":"included","type":"degrees"},{"name":"turn","type":"degrees"},{"name":"constant","type":"degrees"},{"name":"measure1","type":"text"},{"name":"value1","type":"degrees"}]},{"source":"UFGS 07600, 3.1.15: drip angle at most 45 degrees","text":"bend {number}, {before} to {after}: folded {fold}, which leaves {included} between them; the trim has it so","values":[{"name":"number","type":"count"},{"name":"before","type":"text"},{"name":"after","type":"text"},{"name":"fold","type":"degrees"},{"name":"included","type":"degrees"},{"name":"turn","type":"degrees"},{"name":"constant","type":"degrees"}]},{"source":"International Residential Code 2015, R905.2.8.5 (read at inspect2code.com): drip edge at least 2 in up the deck, laps at least 2 in, fastened at 12 in at most","text":"each piece laps the one before by {lap}","values":[{"name":"lap","type":"mm"}]},{"text":"{mass} kg per metre: girth {girth} × {surface} kg per square metre of {gauge} {metal}","values":[{"name":"mass","type":"number"},{"name":"girth","type":"mm"},{"name":"surface","type":"number"},{"name":"gauge","type":"text"},{"name":"metal","type":"text"}]},{"source":"New Zealand Metal Roof and Wall Cladding Code of Practice v3, flashing cover (metalroofing.org.nz): ridge cover at least 130 mm in the lightest case","text":"{leg} {length}, as the trim has it; at least {least} by {rule}","values":[{"name":"leg","type":"text"},{"name":"length","type":"mm"},{"name":"constant","type":"mm"},{"name":"least","type":"mm"},{"name":"rule","type":"text"}]},{"text":"bend {number}, {before} to {after}: folded {fold}, which leaves {included} between them; turn {turn} = −{measure1} {value1} − {measure2} {value2}","values":[{"name":"number","type":"count"},{"name":"before","type":"text"},{"name":"after","type":"text"},{"name":"fold","type":"degrees"},{"name":"included","type":"degrees"},{"name":"turn","type":"degrees"},{"name":"constant","type":"degrees"},{"name":"measure1","type":"text"},{"name":"value1","type":"degrees"},{"name":"measure2","type":"text"},{"name":"value2","type":"degrees"}]},{"source":"New Zealand Metal Roof and Wall Cladding Code of Practice v3, flashing laps: at least 100 mm sealed","text":"each piece laps the one before by {lap}","values":[{"name":"lap","type":"mm"}]},{"text":"{length} as measured, entered as {entered}","values":[{"name":"length","type":"mm"},{"name":"entered","type":"text"}]},{"text":"{usable} to cover","values":[{"name":"usable","type":"mm"},{"name":"measured","type":"mm"}]},{"text":"{count} pieces, {policy}: ({length} − lap {lap}) / (longest piece {limit} − lap {lap}) = {parts}, rounded up; with their laps they are {total} together","values":[{"name":"count","type":"count"},{"name":"policy","type":"text"},{"name":"length","type":"mm"},{"name":"lap","type":"mm"},{"name":"limit","type":"mm"},{"name":"parts","type":"number"},{"name":"total","type":"mm"}]},{"source":"IRC R905.2.8.5: at most 12 in","text":"{count} fasteners, at most {spacing} apart on {length}, both ends too","values":[{"name":"count","type":"count"},{"name":"rows","type":"count"},{"name":"spacing","type":"mm"},{"name":"length","type":"mm"}]},{"source":"common practice, no source","text":"{count} fasteners in {rows} rows, at most {spacing} apart on {length}, both ends too","values":[{"name":"count","type":"count"},{"name":"rows","type":"count"},{"name":"spacing","type":"mm"},{"name":"length","type":"mm"}]},{"text":"sealant: {beads} × the girth of {girth}, a bead at each lap ({laps}) and each mitre ({corners})","values":[{"name":"beads","type":"count"},{"name":"girth","type":"mm"},{"name":"laps","type":"count"},{"name":"corners","type":"count"}]}],"id":"0b54c3f4-1a2b-4c3d-8e4f-000000000002","job":{"address":"1 Invented Lane","chains":[{"closed":true,"corners":[{"kind":"square_outside"},{"kind":"square_outside"},{"kind":"square_outside"},{"kind":"square_outside"}],"id":"eave","name":"House eave","runs":[{"id":"E1","kind":"eave","lengths":[{"entered":"40''","mm":12192}],"slope":{"rise":6,"run":12},"trims":[{"trim":"eave-drip-edge"}]},{"id":"E2","kind":"eave","lengths":[{"entered":"24''","mm":7315.2}],"slope":{"rise":6,"run":12},"trims":[{"trim":"eave-drip-edge"}]},{"id":"E3","kind":"eave","lengths":[{"entered":"40''","mm":12192}],"slope":{"rise":6,"run":12},"trims":[{"trim":"eave-drip-edge"}]},{"id":"E4","kind":"eave","lengths":[{"entered":"24''","mm":7315.2}],"slope":{"rise":6,"run":12},"trims":[{"trim":"eave-drip-edge"}]}]},{"id":"ridge","name":"Ridge","runs":[{"id":"R1","kind":"ridge","lengths":[{"entered":"16''","mm":4876.8}],"other_slope":{"rise":6,"run":12},"slope":{"rise":6,"run":12},"trims":[{"trim":"ridge-cap"}]}]}],"customer":"Invented customer","id":"0b54c3f4-1a2b-4c3d-8e4f-000000000002","material":{"colour":"Slate","gauge":"24 ga","metal":"galvanised-steel"},"name":"Birch House","rule_sets":["irc-flashing"],"wanted_by":"2026-12-10"},"pieces":[{"blank_length_mm":3200.4,"length_mm":3200.4,"mark":"E1.1","profile":0,"run":"E1"},{"blank_length_mm":3200.4,"length_mm":3200.4,"mark":"E1.2","profile":0,"run":"E1","start":{"allowance_mm":50.8,"kind":"lap"}},{"blank_length_mm":3200.4,"length_mm":3200.4,"mark":"E1.3","profile":0,"run":"E1","start":{"allowance_mm":50.8,"kind":"lap"}},{"blank_length_mm":2743.2,"length_mm":2743.2,"mark":"E1.4","profile":0,"run":"E1","start":{"allowance_mm":50.8,"kind":"lap"}},{"blank_length_mm":3200.4,"length_mm":3200.4,"mark":"E2.1","profile":0,"run":"E2"},{"blank_length_mm":3200.4,"length_mm":3200.4,"mark":"E2.2","profile":0,"run":"E2","start":{"allowance_mm":50.8,"kind":"lap"}},{"blank_length_mm":1016,"length_mm":1016,"mark":"E2.3","profile":0,"run":"E2","start":{"allowance_mm":50.8,"kind":"lap"}},{"blank_length_mm":3200.4,"length_mm":3200.4,"mark":"E3.1","profile":0,"run":"E3"},{"blank_length_mm":3200.4,"length_mm":3200.4,"mark":"E3.2","profile":0,"run":"E3","start":{"allowance_mm":50.8,"kind":"lap"}},{"blank_length_mm":3200.4,"length_mm":3200.4,"mark":"E3.3","profile":0,"run":"E3","start":{"allowance_mm":50.8,"kind":"lap"}},{"blank_length_mm":2743.2,"length_mm":2743.2,"mark":"E3.4","profile":0,"run":"E3","start":{"allowance_mm":50.8,"kind":"lap"}},{"blank_length_mm":3200.4,"length_mm":3200.4,"mark":"E4.1","profile":0,"run":"E4"},{"blank_length_mm":3200.4,"length_mm":3200.4,"mark":"E4.2","profile":0,"run":"E4","start":{"allowance_mm":50.8,"kind":"lap"}},{"blank_length_mm":1016,"length_mm":1016,"mark":"E4.3","profile":0,"run":"E4","start":{"allowance_mm":50.8,"kind":"lap"}},{"blank_length_mm":3200.4,"length_mm":3200.4,"mark":"R1.1","profile":1,"run":"R1"},{"blank_length_mm":1778,"length_mm":1778,"mark":"R1.2","profile":1,"run":"R1","start":{"allowance_mm":101.6,"kind":"lap"}}],"profiles":[{"derivations":[{"because":[{"formula":0,"values":["bend 1",63.434948823,"0.0276\" (0.70 mm)","0.0242\" (0.62 mm)","0.0341\" (0.87 mm)","0.0440\" (1.12 mm)"]},{"formula":0,"values":["bend 2",35,"0.0276\" (0.70 mm)","0.0105\" (0.27 mm)","0.0174\" (0.44 mm)","0.0243\" (0.62 mm)"]},{"formula":1,"values":["end hem edge",180,"0.0000\" (0.00 mm)","0.0170\" (0.43 mm)","0.0276\" (0.70 mm)","0.0382\" (0.97 mm)"]},{"formula":2},{"formula":3},{"formula":4,"values":["0.0276\" (0.70 mm)","24 ga","Galvanised steel"]},{"formula":5,"values":[0.44,"Galvanised steel"]}],"formula":6,"values":[135.209085,"5.3232\" (135.21 mm)",127,9.525,"0.0518\" (1.32 mm)"]},{"formula":7,"values":["Deck flange",63.5,63.5,50.8,"IRC R905.2.8.5"]},{"because":[{"formula":8,"values":["Height of the face",50.8]}],"formula":9,"values":["Face",50.8,0,"Height of the face",50.8,1.5875,38.1,"IBC 1507.2.8.3"]},{"formula":10,"values":["Kick",12.7,12.7]},{"because":[{"formula":11,"values":["slope",26.565051177,6]}],"formula":12,"values":[1,"Deck flange","Face",63.434948823,116.565051177,-63.434948823,-90,"slope",26.565051177]},{"formula":13,"values":[2,"Face","Kick",35,145,35,35]},{"formula":14,"values":[50.8]},{"formula":15,"values":[0.763,135.209085,5.6453,"24 ga","Galvanised steel"]}],"girth_mm":135.209085,"id":"P1","kilograms_per_metre":0.7632958475505,"material":{"colour":"Slate","gauge":"24 ga","metal":"galvanised-steel"},"profile":{"bends":[{"inside_radius_mm":0.70104,"turn_degrees":-63.434948823},{"inside_radius_mm":0.70104,"turn_degrees":35}],"colour_face":"left","end_hem":{"flat_mm":9.525,"inside_radius_mm":0,"kind":"closed","side":"right"},"first_direction_degrees":-26.565051177,"legs":[{"length_mm":63.5,"name":"deck"},{"length_mm":50.8,"name":"face"},{"length_mm":12.7,"name":"kick"}],"name":"Eave drip edge","start_x_mm":-56.796127,"start_y_mm":28.398063,"trim":"eave-drip-edge"},"thickness_mm":0.70104},{"derivations":[{"because":[{"formula":1,"values":["start hem edge",180,"0.0000\" (0.00 mm)","0.0170\" (0.43 mm)","0.0276\" (0.70 mm)","0.0382\" (0.97 mm)"]},{"formula":0,"values":["bend 1",53.130102354,"0.0276\" (0.70 mm)","0.0183\" (0.47 mm)","0.0276\" (0.70 mm)","0.0369\" (0.94 mm)"]},{"formula":1,"values":["end hem edge",180,"0.0000\" (0.00 mm)","0.0170\" (0.43 mm)","0.0276\" (0.70 mm)","0.0382\" (0.97 mm)"]},{"formula":2},{"formula":3},{"formula":4,"values":["0.0276\" (0.70 mm)","24 ga","Galvanised steel"]},{"formula":5,"values":[0.44,"Galvanised steel"]}],"formula":6,"values":[328.867958,"12.9476\" (328.87 mm)",304.8,25.4,"0.0524\" (1.33 mm)"]},{"formula":16,"values":["Wing on the plane of the run",152.4,152.4,130,"Code of Practice v3, cover C1"]},{"formula":16,"values":["Wing on the other plane",152.4,152.4,130,"Code of Practice v3, cover C1"]},{"because":[{"formula":11,"values":["slope",26.565051177,6]},{"formula":11,"values":["other slope",26.565051177,6]}],"formula":17,"values":[1,"Wing on the plane of the run","Wing on the other plane",53.130102354,126.869897646,-53.130102354,0,"slope",26.565051177,"other slope",26.565051177]},{"formula":18,"values":[101.6]},{"formula":15,"values":[1.857,328.867958,5.6453,"24 ga","Galvanised steel"]}],"girth_mm":328.867958,"id":"P2","kilograms_per_metre":1.8565582832974,"material":{"colour":"Slate","gauge":"24 ga","metal":"galvanised-steel"},"profile":{"bends":[{"inside_radius_mm":0.70104,"turn_degrees":-53.130102354}],"colour_face":"left","end_hem":{"flat_mm":12.7,"inside_radius_mm":0,"kind":"closed","side":"right"},"first_direction_degrees":26.565051177,"legs":[{"length_mm":152.4,"name":"first_wing"},{"length_mm":152.4,"name":"second_wing"}],"name":"Ridge cap","start_hem":{"flat_mm":12.7,"inside_radius_mm":0,"kind":"closed","side":"right"},"start_x_mm":-136.310704,"start_y_mm":-68.155352,"trim":"ridge-cap"},"thickness_mm":0.70104}],"revision":1,"runs":[{"derivations":[{"because":[{"formula":19,"values":[12192,"40''"]}],"formula":20,"values":[12192,12192]},{"formula":21,"values":[4,"as full lengths and the rest",12192,50.8,3200.4,3.86,12344.4]}],"mark":"E1","piece_count":4,"piece_limit_mm":3200.4,"profile":0,"run":"E1","trim":"eave-drip-edge","usable_length_mm":12192},{"derivations":[{"because":[{"formula":19,"values":[7315.2,"24''"]}],"formula":20,"values":[7315.2,7315.2]},{"formula":21,"values":[3,"as full lengths and the rest",7315.2,50.8,3200.4,2.31,7416.8]}],"first_piece":4,"mark":"E2","piece_count":3,"piece_limit_mm":3200.4,"profile":0,"run":"E2","trim":"eave-drip-edge","usable_length_mm":7315.2},{"derivations":[{"because":[{"formula":19,"values":[12192,"40''"]}],"formula":20,"values":[12192,12192]},{"formula":21,"values":[4,"as full lengths and the rest",12192,50.8,3200.4,3.86,12344.4]}],"first_piece":7,"mark":"E3","piece_count":4,"piece_limit_mm":3200.4,"profile":0,"run":"E3","trim":"eave-drip-edge","usable_length_mm":12192},{"derivations":[{"because":[{"formula":19,"values":[7315.2,"24''"]}],"formula":20,"values":[7315.2,7315.2]},{"formula":21,"values":[3,"as full lengths and the rest",7315.2,50.8,3200.4,2.31,7416.8]}],"first_piece":11,"mark":"E4","piece_count":3,"piece_limit_mm":3200.4,"profile":0,"run":"E4","trim":"eave-drip-edge","usable_length_mm":7315.2},{"derivations":[{"because":[{"formula":19,"values":[4876.8,"16''"]}],"formula":20,"values":[4876.8,4876.8]},{"formula":21,"values":[2,"as full lengths and the rest",4876.8,101.6,3200.4,1.55,4978.4]}],"first_piece":14,"mark":"R1","piece_count":2,"piece_limit_mm":3200.4,"profile":1,"run":"R1","trim":"ridge-cap","usable_length_mm":4876.8}]}');
CREATE TABLE piece_counts (order_id TEXT NOT NULL, mark TEXT NOT NULL, state TEXT NOT NULL, count INTEGER NOT NULL CHECK (count >= 0), due TEXT NOT NULL DEFAULT '9999', number INTEGER NOT NULL DEFAULT 0, PRIMARY KEY (order_id, mark, state)) WITHOUT ROWID;
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.1','bundled',0,'2026-12-10',1);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.1','cut',0,'2026-12-10',1);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.1','folded',0,'2026-12-10',1);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.1','loaded',1,'2026-12-10',1);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.1','ordered',0,'2026-12-10',1);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.2','bundled',0,'2026-12-10',2);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.2','cut',0,'2026-12-10',2);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.2','folded',0,'2026-12-10',2);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.2','loaded',1,'2026-12-10',2);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.2','ordered',0,'2026-12-10',2);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E1.1','ordered',1,'2026-12-10',1);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E1.2','ordered',1,'2026-12-10',2);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E1.3','ordered',1,'2026-12-10',3);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E1.4','ordered',1,'2026-12-10',4);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E2.1','ordered',1,'2026-12-10',5);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E2.2','ordered',1,'2026-12-10',6);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E2.3','ordered',1,'2026-12-10',7);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E3.1','ordered',1,'2026-12-10',8);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E3.2','ordered',1,'2026-12-10',9);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E3.3','ordered',1,'2026-12-10',10);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E3.4','ordered',1,'2026-12-10',11);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E4.1','ordered',1,'2026-12-10',12);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E4.2','ordered',1,'2026-12-10',13);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E4.3','ordered',1,'2026-12-10',14);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','R1.1','ordered',1,'2026-12-10',15);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','R1.2','ordered',1,'2026-12-10',16);
INSERT INTO "piece_counts" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.1','bundled',0,'2026-03-01',3);
INSERT INTO "piece_counts" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.1','cut',0,'2026-03-01',3);
INSERT INTO "piece_counts" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.1','folded',0,'2026-03-01',3);
INSERT INTO "piece_counts" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.1','loaded',1,'2026-03-01',3);
INSERT INTO "piece_counts" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.1','ordered',0,'2026-03-01',3);
INSERT INTO "piece_counts" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.2','bundled',0,'2026-03-01',4);
INSERT INTO "piece_counts" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.2','cut',0,'2026-03-01',4);
INSERT INTO "piece_counts" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.2','folded',0,'2026-03-01',4);
INSERT INTO "piece_counts" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.2','loaded',1,'2026-03-01',4);
INSERT INTO "piece_counts" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.2','ordered',0,'2026-03-01',4);
CREATE TABLE piece_events (seq INTEGER PRIMARY KEY AUTOINCREMENT, id TEXT NOT NULL UNIQUE, order_id TEXT NOT NULL, mark TEXT NOT NULL, kind TEXT NOT NULL, state TEXT NOT NULL, count INTEGER NOT NULL CHECK (count > 0), at TEXT NOT NULL, station TEXT NOT NULL, person TEXT NOT NULL, note TEXT NOT NULL, FOREIGN KEY (order_id, mark) REFERENCES pieces (order_id, mark));
INSERT INTO "piece_events" VALUES(1,'4fe9c44c-8c65-436c-b669-878210d5bedb','0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.1','order','ordered',1,'2026-11-26T03:46:42Z','','','revision');
INSERT INTO "piece_events" VALUES(2,'e71faa92-c0e3-4f3d-b02b-1cbe692c28f8','0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.2','order','ordered',1,'2026-11-26T03:46:42Z','','','revision');
INSERT INTO "piece_events" VALUES(3,'34459da4-e8f8-4226-8c62-4de4ef3a71af','9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.1','order','ordered',1,'2026-11-26T03:46:44Z','','','revision');
INSERT INTO "piece_events" VALUES(4,'61286db5-639a-44ce-bf9b-1fdc15b7f2d7','9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.2','order','ordered',1,'2026-11-26T03:46:44Z','','','revision');
INSERT INTO "piece_events" VALUES(5,'f2d15584-33cd-4e5a-944f-40d07dd3f2c0','9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.1','advance','cut',1,'2026-11-26T03:46:47Z','','','');
INSERT INTO "piece_events" VALUES(6,'c6b71990-16eb-48b0-884a-fc72c5dab963','9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.2','advance','cut',1,'2026-11-26T03:46:47Z','','','');
INSERT INTO "piece_events" VALUES(7,'f0af7bea-6106-4baf-914b-4535e65e5629','0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.1','advance','cut',1,'2026-11-26T03:46:47Z','','','');
INSERT INTO "piece_events" VALUES(8,'4dfa4042-cba7-4367-be9a-5fd86b9e1995','0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.2','advance','cut',1,'2026-11-26T03:46:47Z','','','');
INSERT INTO "piece_events" VALUES(9,'818b3908-51eb-44a7-b276-712b2315747f','9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.1','advance','folded',1,'2026-11-26T03:46:47Z','','','');
INSERT INTO "piece_events" VALUES(10,'0861e45a-53af-4ed5-b12a-50f37ac9af08','9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.2','advance','folded',1,'2026-11-26T03:46:47Z','','','');
INSERT INTO "piece_events" VALUES(11,'cd0a16a7-2369-43b5-a6b8-5462f42ce110','0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.1','advance','folded',1,'2026-11-26T03:46:47Z','','','');
INSERT INTO "piece_events" VALUES(12,'12193aa5-893c-48c0-ac49-f882f37a3d1b','0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.2','advance','folded',1,'2026-11-26T03:46:47Z','','','');
INSERT INTO "piece_events" VALUES(13,'dd32cddc-650a-4b60-b013-c6ce6b0aa8f8','9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.1','advance','bundled',1,'2026-11-26T03:46:48Z','','','B1');
INSERT INTO "piece_events" VALUES(14,'5219f24f-cc84-43a7-9871-2e62e36aa953','9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.1','advance','loaded',1,'2026-11-26T03:46:48Z','','','B1');
INSERT INTO "piece_events" VALUES(15,'72f6c563-bd64-41cd-9b21-9d0bf1a6b601','9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.2','advance','bundled',1,'2026-11-26T03:46:48Z','','','B1');
INSERT INTO "piece_events" VALUES(16,'0f5de934-d1ee-4d07-aa75-e872ca9c2435','9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.2','advance','loaded',1,'2026-11-26T03:46:48Z','','','B1');
INSERT INTO "piece_events" VALUES(17,'3ff944ad-a61e-4683-a0dd-262af44c3741','0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.1','advance','bundled',1,'2026-11-26T03:46:48Z','','','B2');
INSERT INTO "piece_events" VALUES(18,'6db0e7e1-d338-41ec-b794-b6af4a126db4','0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.1','advance','loaded',1,'2026-11-26T03:46:48Z','','','B2');
INSERT INTO "piece_events" VALUES(19,'a4ad42fe-b402-469e-90f9-f1c0c914d573','0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.2','advance','bundled',1,'2026-11-26T03:46:48Z','','','B2');
INSERT INTO "piece_events" VALUES(20,'44b0a7a1-a6ad-47cb-8031-1232c6f5650e','0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.2','advance','loaded',1,'2026-11-26T03:46:48Z','','','B2');
INSERT INTO "piece_events" VALUES(21,'e4e5bdc5-8282-4e9d-a741-b3303c2e33c4','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E1.1','order','ordered',1,'2026-11-26T14:36:42Z','','','revision');
INSERT INTO "piece_events" VALUES(22,'5d787b4f-9a2b-4a72-a1e4-accc86fe6d1d','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E1.2','order','ordered',1,'2026-11-26T14:36:42Z','','','revision');
INSERT INTO "piece_events" VALUES(23,'4472079a-8eb9-46d9-856f-d3a4d13e597a','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E1.3','order','ordered',1,'2026-11-26T14:36:42Z','','','revision');
INSERT INTO "piece_events" VALUES(24,'fff80a36-5489-43a2-b5ce-405351c8b209','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E1.4','order','ordered',1,'2026-11-26T14:36:42Z','','','revision');
INSERT INTO "piece_events" VALUES(25,'41138ff2-3de2-41ca-a25f-199cbda18bc0','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E2.1','order','ordered',1,'2026-11-26T14:36:42Z','','','revision');
INSERT INTO "piece_events" VALUES(26,'69fd4c8e-73b0-4c3c-89de-1336816c61f7','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E2.2','order','ordered',1,'2026-11-26T14:36:42Z','','','revision');
INSERT INTO "piece_events" VALUES(27,'48eed077-5fef-4619-abfe-95f2bfc547d2','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E2.3','order','ordered',1,'2026-11-26T14:36:42Z','','','revision');
INSERT INTO "piece_events" VALUES(28,'75c376a2-618a-4070-9753-5ef67ed6959d','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E3.1','order','ordered',1,'2026-11-26T14:36:42Z','','','revision');
INSERT INTO "piece_events" VALUES(29,'cc7133e8-5496-4bf4-b2a1-cb0018b2ab0f','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E3.2','order','ordered',1,'2026-11-26T14:36:42Z','','','revision');
INSERT INTO "piece_events" VALUES(30,'49022c2c-efa0-40b0-9e1e-b5c12829ab55','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E3.3','order','ordered',1,'2026-11-26T14:36:42Z','','','revision');
INSERT INTO "piece_events" VALUES(31,'2e1904d0-f0a7-451c-94cd-05bd92b5ac23','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E3.4','order','ordered',1,'2026-11-26T14:36:42Z','','','revision');
INSERT INTO "piece_events" VALUES(32,'46ac1875-4d09-488b-9d1f-5164ff7ce357','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E4.1','order','ordered',1,'2026-11-26T14:36:42Z','','','revision');
INSERT INTO "piece_events" VALUES(33,'2538ebc2-565c-4130-b4e5-8e1a78f2b8ac','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E4.2','order','ordered',1,'2026-11-26T14:36:42Z','','','revision');
INSERT INTO "piece_events" VALUES(34,'2559aec4-b99f-4478-a819-4d0e50cc97d7','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E4.3','order','ordered',1,'2026-11-26T14:36:42Z','','','revision');
INSERT INTO "piece_events" VALUES(35,'54871f7b-18b2-450b-b06e-7d31fc4882e7','0b54c3f4-1a2b-4c3d-8e4f-000000000002','R1.1','order','ordered',1,'2026-11-26T14:36:42Z','','','revision');
INSERT INTO "piece_events" VALUES(36,'60dcb8ba-4829-4adc-8339-f380bbdce48f','0b54c3f4-1a2b-4c3d-8e4f-000000000002','R1.2','order','ordered',1,'2026-11-26T14:36:42Z','','','revision');
CREATE TABLE pieces (order_id TEXT NOT NULL, mark TEXT NOT NULL, revision INTEGER NOT NULL, run TEXT NOT NULL, profile TEXT NOT NULL, metal TEXT NOT NULL, gauge TEXT NOT NULL, colour TEXT NOT NULL, girth_nm INTEGER NOT NULL, length_nm INTEGER NOT NULL, grams INTEGER NOT NULL, count INTEGER NOT NULL, make TEXT NOT NULL, withdrawn INTEGER NOT NULL DEFAULT 0, number INTEGER NOT NULL DEFAULT 0, PRIMARY KEY (order_id, mark));
INSERT INTO "pieces" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.1',1,'R1','P1','galvanised-steel','24 ga','Slate',328867958,3200400000,5942,1,'e775750d6cd562e0',0,1);
INSERT INTO "pieces" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.2',1,'R1','P1','galvanised-steel','24 ga','Slate',328867958,1778000000,3301,1,'cc7594afaf1145c3',0,2);
INSERT INTO "pieces" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.1',1,'R1','P1','galvanised-steel','24 ga','Slate',328867958,3200400000,5942,1,'e775750d6cd562e0',0,3);
INSERT INTO "pieces" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.2',1,'R1','P1','galvanised-steel','24 ga','Slate',328867958,1778000000,3301,1,'cc7594afaf1145c3',0,4);
INSERT INTO "pieces" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E1.1',1,'E1','P1','galvanised-steel','24 ga','Slate',135209085,3200400000,2443,1,'e097dabe4e16df1a',0,1);
INSERT INTO "pieces" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E1.2',1,'E1','P1','galvanised-steel','24 ga','Slate',135209085,3200400000,2443,1,'2f93e5f0ec7acfab',0,2);
INSERT INTO "pieces" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E1.3',1,'E1','P1','galvanised-steel','24 ga','Slate',135209085,3200400000,2443,1,'2f93e5f0ec7acfab',0,3);
INSERT INTO "pieces" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E1.4',1,'E1','P1','galvanised-steel','24 ga','Slate',135209085,2743200000,2094,1,'9e4df424be359b09',0,4);
INSERT INTO "pieces" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E2.1',1,'E2','P1','galvanised-steel','24 ga','Slate',135209085,3200400000,2443,1,'e097dabe4e16df1a',0,5);
INSERT INTO "pieces" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E2.2',1,'E2','P1','galvanised-steel','24 ga','Slate',135209085,3200400000,2443,1,'2f93e5f0ec7acfab',0,6);
INSERT INTO "pieces" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E2.3',1,'E2','P1','galvanised-steel','24 ga','Slate',135209085,1016000000,776,1,'dfbd0ae08df07bf5',0,7);
INSERT INTO "pieces" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E3.1',1,'E3','P1','galvanised-steel','24 ga','Slate',135209085,3200400000,2443,1,'e097dabe4e16df1a',0,8);
INSERT INTO "pieces" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E3.2',1,'E3','P1','galvanised-steel','24 ga','Slate',135209085,3200400000,2443,1,'2f93e5f0ec7acfab',0,9);
INSERT INTO "pieces" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E3.3',1,'E3','P1','galvanised-steel','24 ga','Slate',135209085,3200400000,2443,1,'2f93e5f0ec7acfab',0,10);
INSERT INTO "pieces" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E3.4',1,'E3','P1','galvanised-steel','24 ga','Slate',135209085,2743200000,2094,1,'9e4df424be359b09',0,11);
INSERT INTO "pieces" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E4.1',1,'E4','P1','galvanised-steel','24 ga','Slate',135209085,3200400000,2443,1,'e097dabe4e16df1a',0,12);
INSERT INTO "pieces" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E4.2',1,'E4','P1','galvanised-steel','24 ga','Slate',135209085,3200400000,2443,1,'2f93e5f0ec7acfab',0,13);
INSERT INTO "pieces" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','E4.3',1,'E4','P1','galvanised-steel','24 ga','Slate',135209085,1016000000,776,1,'dfbd0ae08df07bf5',0,14);
INSERT INTO "pieces" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','R1.1',1,'R1','P2','galvanised-steel','24 ga','Slate',328867958,3200400000,5942,1,'e775750d6cd562e0',0,15);
INSERT INTO "pieces" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000002','R1.2',1,'R1','P2','galvanised-steel','24 ga','Slate',328867958,1778000000,3301,1,'cc7594afaf1145c3',0,16);
CREATE TABLE plan_pieces (plan_id TEXT NOT NULL REFERENCES plans (id), order_id TEXT NOT NULL, mark TEXT NOT NULL, count INTEGER NOT NULL CHECK (count > 0), PRIMARY KEY (plan_id, order_id, mark));
INSERT INTO "plan_pieces" VALUES('f6a12850-745a-44ba-908a-9b96e4af90be','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E1.1',1);
INSERT INTO "plan_pieces" VALUES('f6a12850-745a-44ba-908a-9b96e4af90be','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E1.2',1);
INSERT INTO "plan_pieces" VALUES('f6a12850-745a-44ba-908a-9b96e4af90be','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E1.3',1);
INSERT INTO "plan_pieces" VALUES('f6a12850-745a-44ba-908a-9b96e4af90be','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E1.4',1);
INSERT INTO "plan_pieces" VALUES('f6a12850-745a-44ba-908a-9b96e4af90be','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E2.1',1);
INSERT INTO "plan_pieces" VALUES('f6a12850-745a-44ba-908a-9b96e4af90be','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E2.2',1);
INSERT INTO "plan_pieces" VALUES('f6a12850-745a-44ba-908a-9b96e4af90be','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E2.3',1);
INSERT INTO "plan_pieces" VALUES('f6a12850-745a-44ba-908a-9b96e4af90be','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E3.1',1);
INSERT INTO "plan_pieces" VALUES('f6a12850-745a-44ba-908a-9b96e4af90be','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E3.2',1);
INSERT INTO "plan_pieces" VALUES('f6a12850-745a-44ba-908a-9b96e4af90be','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E3.3',1);
INSERT INTO "plan_pieces" VALUES('f6a12850-745a-44ba-908a-9b96e4af90be','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E3.4',1);
INSERT INTO "plan_pieces" VALUES('f6a12850-745a-44ba-908a-9b96e4af90be','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E4.1',1);
INSERT INTO "plan_pieces" VALUES('f6a12850-745a-44ba-908a-9b96e4af90be','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E4.2',1);
INSERT INTO "plan_pieces" VALUES('f6a12850-745a-44ba-908a-9b96e4af90be','0b54c3f4-1a2b-4c3d-8e4f-000000000002','E4.3',1);
INSERT INTO "plan_pieces" VALUES('f6a12850-745a-44ba-908a-9b96e4af90be','0b54c3f4-1a2b-4c3d-8e4f-000000000002','R1.1',1);
INSERT INTO "plan_pieces" VALUES('f6a12850-745a-44ba-908a-9b96e4af90be','0b54c3f4-1a2b-4c3d-8e4f-000000000002','R1.2',1);
CREATE TABLE plans (id TEXT PRIMARY KEY, metal TEXT NOT NULL, gauge TEXT NOT NULL, colour TEXT NOT NULL, state TEXT NOT NULL CHECK (state IN ('planned', 'cut', 'replaced')), made_at TEXT NOT NULL, document TEXT NOT NULL, pieces INTEGER NOT NULL DEFAULT 0, stock_area DOUBLE PRECISION NOT NULL DEFAULT 0, blank_area DOUBLE PRECISION NOT NULL DEFAULT 0, remnant_area DOUBLE PRECISION NOT NULL DEFAULT 0, cut_at TEXT NOT NULL DEFAULT '');
INSERT INTO "plans" VALUES('fdf8b42a-5b92-455c-8133-a748e4a7cbce','galvanised-steel','24 ga','Slate','cut','2026-11-26T03:46:44Z','{"format":"lapwright/cut-plan","version":1,"program":"0.1.0","plan":{"bound":2,"certificate":{"least":2,"method":"every_plan","patterns":"non_exact"},"due_stages":[{"bound":1,"certificate":{"blank_values":[3333333,2592592,0,0],"method":"patterns","patterns":"non_exact","per_cost":10000000},"value":1},{"bound":2,"certificate":{"blank_values":[2637681,2289855,2637681,3333333],"method":"patterns","patterns":"non_exact","per_cost":10000000},"due_class":1,"value":2}],"ending":"proven","measure":"sheets","patterns":[{"count":1,"length_mm":3200.4,"rest_mm":232.171875,"stock":0,"strips":[{"crosscuts":[{"blank":2,"count":1}],"position_mm":0,"width_mm":329.009375},{"crosscuts":[{"blank":0,"count":1}],"position_mm":329.009375,"width_mm":329.009375},{"crosscuts":[{"blank":1,"count":1}],"position_mm":658.01875,"rest_mm":1422.4,"width_mm":329.009375}]},{"count":1,"length_mm":3200.4,"rest_mm":890.190625,"stock":0,"strips":[{"crosscuts":[{"blank":3,"count":1}],"position_mm":0,"rest_mm":1422.4,"width_mm":329.009375}]}],"proof":"proven_least","setup_trades":[{"setups":2,"value":2}],"setups":2,"value":2,"waste":{"blanks_m2":3.2758805449999997,"scrap_m2":4.527974815000001,"stock_m2":7.803855360000001}},"problem":{"blanks":[{"count":1,"girth_mm":329.009375,"key":"9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77/R1.1","length_mm":3200.4},{"count":1,"girth_mm":329.009375,"key":"9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77/R1.2","length_mm":1778},{"count":1,"due_class":1,"girth_mm":329.009375,"key":"0b54c3f4-1a2b-4c3d-8e4f-000000000001/R1.1","length_mm":3200.4},{"count":1,"due_class":1,"girth_mm":329.009375,"key":"0b54c3f4-1a2b-4c3d-8e4f-000000000001/R1.2","length_mm":1778}],"stocks":[{"key":"sheet-48x126","kind":"sheet","length_mm":3200.4,"width_mm":1219.2}]}}',0,0.0,0.0,0.0,'');
INSERT INTO "plans" VALUES('f6a12850-745a-44ba-908a-9b96e4af90be','galvanised-steel','24 ga','Slate','planned','2026-11-26T14:36:42Z','{"format":"lapwright/cut-plan","version":1,"program":"0.1.0","plan":{"bound":2,"certificate":{"method":"area","patterns":"non_exact"},"ending":"proven","measure":"sheets","patterns":[{"count":1,"length_mm":3200.4,"rest_mm":19.84375,"stock":0,"strips":[{"crosscuts":[{"blank":14,"count":1}],"position_mm":0,"width_mm":329.009375},{"crosscuts":[{"blank":15,"count":1}],"position_mm":329.009375,"rest_mm":1422.4,"width_mm":329.009375},{"crosscuts":[{"blank":0,"count":1}],"position_mm":658.01875,"width_mm":135.334375},{"crosscuts":[{"blank":1,"count":1}],"position_mm":793.353125,"width_mm":135.334375},{"crosscuts":[{"blank":2,"count":1}],"position_mm":928.6875,"width_mm":135.334375},{"crosscuts":[{"blank":4,"count":1}],"position_mm":1064.021875,"width_mm":135.334375}]},{"count":1,"length_mm":3200.4,"rest_mm":1.190625,"stock":0,"strips":[{"crosscuts":[{"blank":5,"count":1}],"position_mm":0,"width_mm":135.334375},{"crosscuts":[{"blank":7,"count":1}],"position_mm":135.334375,"width_mm":135.334375},{"crosscuts":[{"blank":8,"count":1}],"position_mm":270.66875,"width_mm":135.334375},{"crosscuts":[{"blank":9,"count":1}],"position_mm":406.003125,"width_mm":135.334375},{"crosscuts":[{"blank":11,"count":1}],"position_mm":541.3375,"width_mm":135.334375},{"crosscuts":[{"blank":12,"count":1}],"position_mm":676.671875,"width_mm":135.334375},{"crosscuts":[{"blank":3,"count":1}],"position_mm":812.00625,"rest_mm":457.2,"width_mm":135.334375},{"crosscuts":[{"blank":10,"count":1}],"position_mm":947.340625,"rest_mm":457.2,"width_mm":135.334375},{"crosscuts":[{"blank":6,"count":1},{"blank":13,"count":1}],"position_mm":1082.675,"rest_mm":1168.4,"width_mm":135.334375}]}],"proof":"proven_least","setup_trades":[{"setups":2,"value":2}],"setups":2,"value":2,"waste":{"blanks_m2":6.9866795749999975,"scrap_m2":0.8171757850000034,"stock_m2":7.803855360000001}},"problem":{"blanks":[{"count":1,"girth_mm":135.334375,"key":"0b54c3f4-1a2b-4c3d-8e4f-000000000002/E1.1","length_mm":3200.4},{"count":1,"girth_mm":135.334375,"key":"0b54c3f4-1a2b-4c3d-8e4f-000000000002/E1.2","length_mm":3200.4},{"count":1,"girth_mm":135.334375,"key":"0b54c3f4-1a2b-4c3d-8e4f-000000000002/E1.3","length_mm":3200.4},{"count":1,"girth_mm":135.334375,"key":"0b54c3f4-1a2b-4c3d-8e4f-000000000002/E1.4","length_mm":2743.2},{"count":1,"girth_mm":135.334375,"key":"0b54c3f4-1a2b-4c3d-8e4f-000000000002/E2.1","length_mm":3200.4},{"count":1,"girth_mm":135.334375,"key":"0b54c3f4-1a2b-4c3d-8e4f-000000000002/E2.2","length_mm":3200.4},{"count":1,"girth_mm":135.334375,"key":"0b54c3f4-1a2b-4c3d-8e4f-000000000002/E2.3","length_mm":1016},{"count":1,"girth_mm":135.334375,"key":"0b54c3f4-1a2b-4c3d-8e4f-000000000002/E3.1","length_mm":3200.4},{"count":1,"girth_mm":135.334375,"key":"0b54c3f4-1a2b-4c3d-8e4f-000000000002/E3.2","length_mm":3200.4},{"count":1,"girth_mm":135.334375,"key":"0b54c3f4-1a2b-4c3d-8e4f-000000000002/E3.3","length_mm":3200.4},{"count":1,"girth_mm":135.334375,"key":"0b54c3f4-1a2b-4c3d-8e4f-000000000002/E3.4","length_mm":2743.2},{"count":1,"girth_mm":135.334375,"key":"0b54c3f4-1a2b-4c3d-8e4f-000000000002/E4.1","length_mm":3200.4},{"count":1,"girth_mm":135.334375,"key":"0b54c3f4-1a2b-4c3d-8e4f-000000000002/E4.2","length_mm":3200.4},{"count":1,"girth_mm":135.334375,"key":"0b54c3f4-1a2b-4c3d-8e4f-000000000002/E4.3","length_mm":1016},{"count":1,"girth_mm":329.009375,"key":"0b54c3f4-1a2b-4c3d-8e4f-000000000002/R1.1","length_mm":3200.4},{"count":1,"girth_mm":329.009375,"key":"0b54c3f4-1a2b-4c3d-8e4f-000000000002/R1.2","length_mm":1778}],"stocks":[{"key":"sheet-48x126","kind":"sheet","length_mm":3200.4,"width_mm":1219.2}]}}',16,7.80385536000000090695e+00,6.98667957499999747739e+00,0.0,'');
CREATE TABLE quarantine (hash TEXT PRIMARY KEY, order_id TEXT NOT NULL, revision INTEGER NOT NULL, reason TEXT NOT NULL, received_at TEXT NOT NULL, document TEXT NOT NULL, dismissed INTEGER NOT NULL DEFAULT 0);
INSERT INTO "quarantine" VALUES('646d76f5e8fff811c8bbf5a3d9363b0d6bc471f989ec2ad690173b2d183e888d','9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77',2,'R1.2 changes, but 1 of it left on a truck: order the new piece under another mark','2026-11-26T03:46:49Z','{
  "format": "lapwright/order",
  "version": 1,
  "program": "0.1.0",
  "accessories": [
    {"count": 62, "derivation": {"formula": 15, "values": [62, 2, 304.8, 9144]}, "name": "fastener", "run": "R1", "trim": "ridge-cap"},
    {"count": 2, "derivation": {"formula": 16, "values": [2, 328.867958, 2, 0]}, "length_mm": 657.735916, "name": "sealant", "run": "R1", "trim": "ridge-cap"}
  ],
  "formulas": [
    {
      "text": "{line}, {angle} pressed flat: takes up {deduction} = 2 × setback {setback} − allowance {allowance}",
      "values": [
        {"name": "line", "type": "text"},
        {"name": "angle", "type": "degrees"},
        {"name": "radius", "type": "text"},
        {"name": "deduction", "type": "text"},
        {"name": "setback", "type": "text"},
        {"name": "allowance", "type": "text"}
      ]
    },
    {
      "text": "{line}, {angle} over an inside radius of {radius}: takes up {deduction} = 2 × setback {setback} − allowance {allowance}",
      "values": [
        {"name": "line", "type": "text"},
        {"name": "angle", "type": "degrees"},
        {"name": "radius", "type": "text"},
        {"name": "deduction", "type": "text"},
        {"name": "setback", "type": "text"},
        {"name": "allowance", "type": "text"}
      ]
    },
    {"text": "setback = tan(half the fold angle) × (inside radius + thickness); of a hem''s edge inside radius + thickness"},
    {
      "source": "Kalpakjian and Schmid, Manufacturing Engineering and Technology, 6th edition in SI units, p. 418, eq. 16.2",
      "text": "allowance = fold angle in radians × (inside radius + K × thickness)"
    },
    {
      "text": "thickness {thickness}: {gauge} {metal}",
      "values": [{"name": "thickness", "type": "text"}, {"name": "gauge", "type": "text"}, {"name": "metal", "type": "text"}]
    },
    {
      "source": "Default of 0.44: common practice, no source. Beside it: FAA-H-8083-31 bend allowance (0.01743 R + 0.0078 T) per degree is K 0.447.",
      "text": "K {k} is kept with the metal {metal}",
      "values": [{"name": "k", "type": "number"}, {"name": "metal", "type": "text"}]
    },
    {
      "text": "girth {girth}, exactly {fine} = outside legs {legs} + hems {hems} − what the bends take up {deductions}",
      "values": [
        {"name": "girth", "type": "mm"},
        {"name": "fine", "type": "text"},
        {"name": "legs", "type": "mm"},
        {"name": "hems", "type": "mm"},
        {"name": "deductions", "type": "text"}
      ]
    },
    {
      "source": "New Zealand Metal Roof and Wall Cladding Code of Practice v3, flashing cover (metalroofing.org.nz): ridge cover at least 130 mm in the lightest case",
      "text": "{leg} {length}, as the trim has it; at least {least} by {rule}",
      "values": [
        {"name": "leg", "type": "text"},
        {"name": "length", "type": "mm"},
        {"name": "constant", "type": "mm"},
        {"name": "least", "type": "mm"},
        {"name": "rule", "type": "text"}
      ]
    },
    {
      "text": "{slope} {angle} is {rise} in 12",
      "values": [{"name": "slope", "type": "text"}, {"name": "angle", "type": "degrees"}, {"name": "rise", "type": "number"}]
    },
    {
      "text": "bend {number}, {before} to {after}: folded {fold}, which leaves {included} between them; turn {turn} = −{measure1} {value1} − {measure2} {value2}",
      "values": [
        {"name": "number", "type": "count"},
        {"name": "before", "type": "text"},
        {"name": "after", "type": "text"},
        {"name": "fold", "type": "degrees"},
        {"name": "included", "type": "degrees"},
        {"name": "turn", "type": "degrees"},
        {"name": "constant", "type": "degrees"},
        {"name": "measure1", "type": "text"},
        {"name": "value1", "type": "degrees"},
        {"name": "measure2", "type": "text"},
        {"name": "value2", "type": "degrees"}
      ]
    },
    {
      "source": "New Zealand Metal Roof and Wall Cladding Code of Practice v3, flashing laps: at least 100 mm sealed",
      "text": "each piece laps the one before by {lap}",
      "values": [{"name": "lap", "type": "mm"}]
    },
    {
      "text": "{mass} kg per metre: girth {girth} × {surface} kg per square metre of {gauge} {metal}",
      "values": [
        {"name": "mass", "type": "number"},
        {"name": "girth", "type": "mm"},
        {"name": "surface", "type": "number"},
        {"name": "gauge", "type": "text"},
        {"name": "metal", "type": "text"}
      ]
    },
    {"text": "{length} as measured, entered as {entered}", "values": [{"name": "length", "type": "mm"}, {"name": "entered", "type": "text"}]},
    {"text": "{usable} to cover", "values": [{"name": "usable", "type": "mm"}, {"name": "measured", "type": "mm"}]},
    {
      "text": "{count} pieces, {policy}: ({length} − lap {lap}) / (longest piece {limit} − lap {lap}) = {parts}, rounded up; with their laps they are {total} together",
      "values": [
        {"name": "count", "type": "count"},
        {"name": "policy", "type": "text"},
        {"name": "length", "type": "mm"},
        {"name": "lap", "type": "mm"},
        {"name": "limit", "type": "mm"},
        {"name": "parts", "type": "number"},
        {"name": "total", "type": "mm"}
      ]
    },
    {
      "source": "common practice, no source",
      "text": "{count} fasteners in {rows} rows, at most {spacing} apart on {length}, both ends too",
      "values": [{"name": "count", "type": "count"}, {"name": "rows", "type": "count"}, {"name": "spacing", "type": "mm"}, {"name": "length", "type": "mm"}]
    },
    {
      "text": "sealant: {beads} × the girth of {girth}, a bead at each lap ({laps}) and each mitre ({corners})",
      "values": [{"name": "beads", "type": "count"}, {"name": "girth", "type": "mm"}, {"name": "laps", "type": "count"}, {"name": "corners", "type": "count"}]
    }
  ],
  "id": "9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77",
  "job": {
    "address": "1 Invented Lane",
    "chains": [
      {
        "corners": [],
        "id": "ridge",
        "name": "Ridge",
        "runs": [
          {
            "id": "R1",
            "kind": "ridge",
            "lengths": [{"entered": "30''", "mm": 9144}],
            "note": "second revision",
            "other_slope": {"rise": 6, "run": 12},
            "slope": {"rise": 6, "run": 12},
            "trims": [{"trim": "ridge-cap"}]
          }
        ]
      }
    ],
    "customer": "Invented customer",
    "id": "9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77",
    "material": {"colour": "Slate", "gauge": "24 ga", "metal": "galvanised-steel"},
    "name": "Second house",
    "rule_sets": ["irc-flashing"],
    "wanted_by": "2026-03-01"
  },
  "pieces": [
    {"blank_length_mm": 3200.4, "length_mm": 3200.4, "mark": "R1.1", "profile": 0, "run": "R1"},
    {"blank_length_mm": 3200.4, "length_mm": 3200.4, "mark": "R1.2", "profile": 0, "run": "R1", "start": {"allowance_mm": 101.6, "kind": "lap"}},
    {"blank_length_mm": 2946.4, "length_mm": 2946.4, "mark": "R1.3", "profile": 0, "run": "R1", "start": {"allowance_mm": 101.6, "kind": "lap"}}
  ],
  "previous_hash": "2d1afbc51eb9a0a4ef6fe4360cdaf3a5bace82e78934bb8571aa1e5ef049a4b6",
  "profiles": [
    {
      "derivations": [
        {
          "because": [
            {"formula": 0, "values": ["start hem edge", 180, "0.0000\" (0.00 mm)", "0.0170\" (0.43 mm)", "0.0276\" (0.70 mm)", "0.0382\" (0.97 mm)"]},
            {"formula": 1, "values": ["bend 1", 53.130102354, "0.0276\" (0.70 mm)", "0.0183\" (0.47 mm)", "0.0276\" (0.70 mm)", "0.0369\" (0.94 mm)"]},
            {"formula": 0, "values": ["end hem edge", 180, "0.0000\" (0.00 mm)", "0.0170\" (0.43 mm)", "0.0276\" (0.70 mm)", "0.0382\" (0.97 mm)"]},
            {"formula": 2},
            {"formula": 3},
            {"formula": 4, "values": ["0.0276\" (0.70 mm)", "24 ga", "Galvanised steel"]},
            {"formula": 5, "values": [0.44, "Galvanised steel"]}
          ],
          "formula": 6,
          "values": [328.867958, "12.9476\" (328.87 mm)", 304.8, 25.4, "0.0524\" (1.33 mm)"]
        },
        {"formula": 7, "values": ["Wing on the plane of the run", 152.4, 152.4, 130, "Code of Practice v3, cover C1"]},
        {"formula": 7, "values": ["Wing on the other plane", 152.4, 152.4, 130, "Code of Practice v3, cover C1"]},
        {
          "because": [{"formula": 8, "values": ["slope", 26.565051177, 6]}, {"formula": 8, "values": ["other slope", 26.565051177, 6]}],
          "formula": 9,
          "values": [
            1,
            "Wing on the plane of the run",
            "Wing on the other plane",
            53.130102354,
            126.869897646,
            -53.130102354,
            0,
            "slope",
            26.565051177,
            "other slope",
            26.565051177
          ]
        },
        {"formula": 10, "values": [101.6]},
        {"formula": 11, "values": [1.857, 328.867958, 5.6453, "24 ga", "Galvanised steel"]}
      ],
      "girth_mm": 328.867958,
      "id": "P1",
      "kilograms_per_metre": 1.8565582832974,
      "material": {"colour": "Slate", "gauge": "24 ga", "metal": "galvanised-steel"},
      "profile": {
        "bends": [{"inside_radius_mm": 0.70104, "turn_degrees": -53.130102354}],
        "colour_face": "left",
        "end_hem": {"flat_mm": 12.7, "inside_radius_mm": 0, "kind": "closed", "side": "right"},
        "first_direction_degrees": 26.565051177,
        "legs": [{"length_mm": 152.4, "name": "first_wing"}, {"length_mm": 152.4, "name": "second_wing"}],
        "name": "Ridge cap",
        "start_hem": {"flat_mm": 12.7, "inside_radius_mm": 0, "kind": "closed", "side": "right"},
        "start_x_mm": -136.310704,
        "start_y_mm": -68.155352,
        "trim": "ridge-cap"
      },
      "thickness_mm": 0.70104
    }
  ],
  "revision": 2,
  "runs": [
    {
      "derivations": [
        {"because": [{"formula": 12, "values": [9144, "30''"]}], "formula": 13, "values": [9144, 9144]},
        {"formula": 14, "values": [3, "as full lengths and the rest", 9144, 101.6, 3200.4, 2.92, 9347.2]}
      ],
      "mark": "R1",
      "piece_count": 3,
      "piece_limit_mm": 3200.4,
      "profile": 0,
      "run": "R1",
      "trim": "ridge-cap",
      "usable_length_mm": 9144
    }
  ]
}
',0);
CREATE TABLE receipts (id TEXT PRIMARY KEY, load_id TEXT NOT NULL, received_at TEXT NOT NULL, document TEXT NOT NULL, person TEXT NOT NULL DEFAULT '');
CREATE TABLE settings (key TEXT PRIMARY KEY, value TEXT NOT NULL);
INSERT INTO "settings" VALUES('stock','{
  "format": "lapwright/stock",
  "version": 1,
  "program": "0.1.0",
  "items": [
    {
      "key": "sheet-48x126",
      "kind": "sheet",
      "length_mm": 3200.4,
      "material": {"colour": "Slate", "gauge": "24 ga", "metal": "galvanised-steel"},
      "width_mm": 1219.2
    }
  ],
  "shop": "Invented shop"
}
');
INSERT INTO "settings" VALUES('schedule','{"format":"lapwright/schedule","version":1,"program":"0.1.0","deliveries":[{"done":"2026-11-26T15:12:47","due":"2026-12-10T07:00","name":"Birch House","order":"0b54c3f4-1a2b-4c3d-8e4f-000000000002","weight":1}],"first_come":{"fittings":3,"late_deliveries":0,"makespan_seconds":2492,"making_ready_seconds":2220,"settings":4,"weighted_lateness_seconds":0},"from":"2026-11-26T14:37","machines":[{"id":"cutting-line","name":"Cutting line","stage":"cut","worked":[{"from":"2026-11-26T14:37","to":"2026-11-26T15:30"}]},{"id":"box-and-pan-4","name":"Box-and-pan folder 4 ft","stage":"fold","worked":[{"from":"2026-11-26T14:37","to":"2026-11-26T15:30"}]},{"id":"hand-brake-8","name":"Hand brake 8 ft","stage":"fold","worked":[{"from":"2026-11-26T14:37","to":"2026-11-26T15:30"}]},{"id":"long-folder-up-down","name":"Long folder, up and down, 21 ft","stage":"fold","worked":[{"from":"2026-11-26T14:37","to":"2026-11-26T15:30"}]},{"id":"long-folder-up","name":"Long folder, up only, 10 ft 6 in","stage":"fold","worked":[{"from":"2026-11-26T14:37","to":"2026-11-26T15:30"}]}],"makespan_bound_seconds":1974,"method":"every order tried","proven_best":true,"score":{"fittings":3,"late_deliveries":0,"makespan_seconds":2147,"making_ready_seconds":2220,"settings":4,"weighted_lateness_seconds":0},"shortest_first":{"fittings":2,"late_deliveries":0,"makespan_seconds":2492,"making_ready_seconds":1920,"settings":4,"weighted_lateness_seconds":0},"tasks":[{"end":"2026-11-26T14:55:15","fitting":"rack sheet-48x126","key":"cut, 24 ga galvanised-steel Slate, map 2","machine":"cutting-line","name":"Slate 24 ga, map 2","setting":"strips 135.3 135.3 135.3 135.3 135.3 135.3 135.3 135.3 135.3 mm","setup_from":"2026-11-26T14:37","start":"2026-11-26T14:50","units":1},{"end":"2026-11-26T15:08:57","key":"cut, 24 ga galvanised-steel Slate, map 1","machine":"cutting-line","name":"Slate 24 ga, map 1","setting":"strips 329 329 135.3 135.3 135.3 135.3 mm","setup_from":"2026-11-26T14:55:15","start":"2026-11-26T15:05:15","units":1},{"due":"2026-12-10T07:00","end":"2026-11-26T15:12:47","fitting":"face 12 mm","key":"0b54c3f4-1a2b-4c3d-8e4f-000000000002/P1","machine":"long-folder-up-down","name":"Birch House, P1 Eave drip edge","order":"0b54c3f4-1a2b-4c3d-8e4f-000000000002","setting":"program 125.9d1350 128.9d1800f 113.6u351 63.2d636","setup_from":"2026-11-26T14:52:22","start":"2026-11-26T14:59:22","units":14},{"due":"2026-12-10T07:00","end":"2026-11-26T15:11:54","fitting":"face 25 mm","key":"0b54c3f4-1a2b-4c3d-8e4f-000000000002/P2","machine":"long-folder-up","name":"Birch House, P2 Ridge cap","order":"0b54c3f4-1a2b-4c3d-8e4f-000000000002","setting":"program 316.4u1350 319.4u1800f 304.1u1350 307.1u1800f 152.2u532","setup_from":"2026-11-26T15:01:57","start":"2026-11-26T15:08:57","units":2}],"weighted_lateness_bound_seconds":0}');
CREATE TABLE shop_counts (state TEXT PRIMARY KEY, count INTEGER NOT NULL CHECK (count >= 0));
INSERT INTO "shop_counts" VALUES('bundled',0);
INSERT INTO "shop_counts" VALUES('cut',0);
INSERT INTO "shop_counts" VALUES('folded',0);
INSERT INTO "shop_counts" VALUES('loaded',4);
INSERT INTO "shop_counts" VALUES('ordered',16);
CREATE TABLE stock_events (seq INTEGER PRIMARY KEY AUTOINCREMENT, key TEXT NOT NULL, kind TEXT NOT NULL, count INTEGER NOT NULL, length_nm INTEGER NOT NULL, plan_id TEXT NOT NULL, at TEXT NOT NULL, station TEXT NOT NULL, person TEXT NOT NULL, note TEXT NOT NULL);
CREATE TABLE tablets (key TEXT PRIMARY KEY, name TEXT NOT NULL, paired_at TEXT NOT NULL, person TEXT NOT NULL, revoked_at TEXT NOT NULL);
CREATE INDEX piece_events_by_piece ON piece_events (order_id, mark, seq);
CREATE INDEX current_orders_by_due ON current_orders (due, job_name, id);
CREATE INDEX current_orders_unfinished ON current_orders (due, job_name, id) WHERE unfinished > 0;
CREATE INDEX current_orders_held ON current_orders (due, job_name, id) WHERE held > 0;
CREATE INDEX current_orders_by_address ON current_orders (address) WHERE address <> '';
CREATE INDEX piece_counts_by_state ON piece_counts (state, due, order_id, number, mark) WHERE count > 0;
CREATE INDEX piece_events_by_order ON piece_events (order_id, seq);
CREATE INDEX plans_by_state ON plans (state, made_at, id);
CREATE INDEX plan_pieces_by_order ON plan_pieces (order_id, plan_id);
CREATE INDEX loads_by_time ON loads (made_at, id);
CREATE INDEX receipts_by_time ON receipts (received_at, id);
CREATE INDEX quarantine_open ON quarantine (received_at, hash) WHERE dismissed = 0;
CREATE INDEX stock_events_by_key ON stock_events (key, seq);
DELETE FROM "sqlite_sequence";
INSERT INTO "sqlite_sequence" VALUES('piece_events',36);
INSERT INTO "sqlite_sequence" VALUES('arrivals',1);
COMMIT;
PRAGMA user_version = 4;
