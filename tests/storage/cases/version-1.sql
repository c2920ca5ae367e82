-- A shop's database as version 1 of the schema kept it: two orders, one in two revisions, cut, folded and loaded; a
-- later revision of the other waits. All data is invented.
BEGIN TRANSACTION;
CREATE TABLE loads (id TEXT PRIMARY KEY, made_at TEXT NOT NULL, document TEXT NOT NULL);
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
');
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
CREATE TABLE piece_counts (order_id TEXT NOT NULL, mark TEXT NOT NULL, state TEXT NOT NULL, count INTEGER NOT NULL CHECK (count >= 0), PRIMARY KEY (order_id, mark, state)) WITHOUT ROWID;
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.1','bundled',0);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.1','cut',0);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.1','folded',0);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.1','loaded',1);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.1','ordered',0);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.2','bundled',0);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.2','cut',0);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.2','folded',0);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.2','loaded',1);
INSERT INTO "piece_counts" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.2','ordered',0);
INSERT INTO "piece_counts" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.1','bundled',0);
INSERT INTO "piece_counts" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.1','cut',0);
INSERT INTO "piece_counts" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.1','folded',0);
INSERT INTO "piece_counts" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.1','loaded',1);
INSERT INTO "piece_counts" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.1','ordered',0);
INSERT INTO "piece_counts" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.2','bundled',0);
INSERT INTO "piece_counts" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.2','cut',0);
INSERT INTO "piece_counts" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.2','folded',0);
INSERT INTO "piece_counts" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.2','loaded',1);
INSERT INTO "piece_counts" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.2','ordered',0);
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
CREATE TABLE pieces (order_id TEXT NOT NULL, mark TEXT NOT NULL, revision INTEGER NOT NULL, run TEXT NOT NULL, profile TEXT NOT NULL, metal TEXT NOT NULL, gauge TEXT NOT NULL, colour TEXT NOT NULL, girth_nm INTEGER NOT NULL, length_nm INTEGER NOT NULL, grams INTEGER NOT NULL, count INTEGER NOT NULL, make TEXT NOT NULL, withdrawn INTEGER NOT NULL DEFAULT 0, PRIMARY KEY (order_id, mark));
INSERT INTO "pieces" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.1',1,'R1','P1','galvanised-steel','24 ga','Slate',328867958,3200400000,5942,1,'e775750d6cd562e0',0);
INSERT INTO "pieces" VALUES('0b54c3f4-1a2b-4c3d-8e4f-000000000001','R1.2',1,'R1','P1','galvanised-steel','24 ga','Slate',328867958,1778000000,3301,1,'cc7594afaf1145c3',0);
INSERT INTO "pieces" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.1',1,'R1','P1','galvanised-steel','24 ga','Slate',328867958,3200400000,5942,1,'e775750d6cd562e0',0);
INSERT INTO "pieces" VALUES('9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77','R1.2',1,'R1','P1','galvanised-steel','24 ga','Slate',328867958,1778000000,3301,1,'cc7594afaf1145c3',0);
CREATE TABLE plans (id TEXT PRIMARY KEY, metal TEXT NOT NULL, gauge TEXT NOT NULL, colour TEXT NOT NULL, state TEXT NOT NULL CHECK (state IN ('planned', 'cut', 'replaced')), made_at TEXT NOT NULL, document TEXT NOT NULL);
INSERT INTO "plans" VALUES('fdf8b42a-5b92-455c-8133-a748e4a7cbce','galvanised-steel','24 ga','Slate','cut','2026-11-26T03:46:44Z','{"format":"lapwright/cut-plan","version":1,"program":"0.1.0","plan":{"bound":2,"certificate":{"least":2,"method":"every_plan","patterns":"non_exact"},"due_stages":[{"bound":1,"certificate":{"blank_values":[3333333,2592592,0,0],"method":"patterns","patterns":"non_exact","per_cost":10000000},"value":1},{"bound":2,"certificate":{"blank_values":[2637681,2289855,2637681,3333333],"method":"patterns","patterns":"non_exact","per_cost":10000000},"due_class":1,"value":2}],"ending":"proven","measure":"sheets","patterns":[{"count":1,"length_mm":3200.4,"rest_mm":232.171875,"stock":0,"strips":[{"crosscuts":[{"blank":2,"count":1}],"position_mm":0,"width_mm":329.009375},{"crosscuts":[{"blank":0,"count":1}],"position_mm":329.009375,"width_mm":329.009375},{"crosscuts":[{"blank":1,"count":1}],"position_mm":658.01875,"rest_mm":1422.4,"width_mm":329.009375}]},{"count":1,"length_mm":3200.4,"rest_mm":890.190625,"stock":0,"strips":[{"crosscuts":[{"blank":3,"count":1}],"position_mm":0,"rest_mm":1422.4,"width_mm":329.009375}]}],"proof":"proven_least","setup_trades":[{"setups":2,"value":2}],"setups":2,"value":2,"waste":{"blanks_m2":3.2758805449999997,"scrap_m2":4.527974815000001,"stock_m2":7.803855360000001}},"problem":{"blanks":[{"count":1,"girth_mm":329.009375,"key":"9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77/R1.1","length_mm":3200.4},{"count":1,"girth_mm":329.009375,"key":"9a7a2c30-6c8d-4d6f-8a35-55f1d1a30b77/R1.2","length_mm":1778},{"count":1,"due_class":1,"girth_mm":329.009375,"key":"0b54c3f4-1a2b-4c3d-8e4f-000000000001/R1.1","length_mm":3200.4},{"count":1,"due_class":1,"girth_mm":329.009375,"key":"0b54c3f4-1a2b-4c3d-8e4f-000000000001/R1.2","length_mm":1778}],"stocks":[{"key":"sheet-48x126","kind":"sheet","length_mm":3200.4,"width_mm":1219.2}]}}');
CREATE TABLE quarantine (hash TEXT PRIMARY KEY, order_id TEXT NOT NULL, revision INTEGER NOT NULL, reason TEXT NOT NULL, received_at TEXT NOT NULL, document TEXT NOT NULL);
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
');
CREATE TABLE receipts (id TEXT PRIMARY KEY, load_id TEXT NOT NULL, received_at TEXT NOT NULL, document TEXT NOT NULL);
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
CREATE INDEX piece_events_by_piece ON piece_events (order_id, mark, seq);
CREATE INDEX piece_counts_by_state ON piece_counts (state) WHERE count > 0;
DELETE FROM "sqlite_sequence";
INSERT INTO "sqlite_sequence" VALUES('piece_events',20);
COMMIT;
PRAGMA user_version = 1;
