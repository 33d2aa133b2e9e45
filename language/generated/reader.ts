// Written by tests/generated/reader.test.ts. Do not edit.
import { GIVEN_UP, type Made, type Reading, TreeReader } from "../syntax/reader/tree-reader.ts";

export class Reader extends TreeReader {
  protected readDocument(reading: Reading): Made {
    const node: Made = {
      $type: "Document",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      uses: [],
      declarations: [],
    };
    while (this.decideDocument1()) {
      switch (this.kinds[this.at]) {
        case 10: case 12: case 16: case 40: case 46: case 55: case 69: case 71: case 73: case 91: case 119: case 121:
          this.adoptOneOf(this.readDeclaration(this.open(reading, 4)), node, "declarations", node.declarations);
          break;
        case 154:
          this.adoptOneOf(this.readUse(this.open(reading, 2)), node, "uses", node.uses);
          break;
        default:
          throw GIVEN_UP;
      }
    }
    this.close(reading);
    return node;
  }

  private decideDocument1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 10: case 12: case 16: case 40: case 46: case 55: case 69: case 71: case 73: case 91: case 119: case 121: case 154:
        return true;
      default:
        return false;
    }
  }

  private readUse(reading: Reading): Made {
    const node: Made = {
      $type: "Use",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      path: undefined,
    };
    this.take(154, reading, 6);
    this.take(201, reading, 8);
    node.path = this.takenText();
    this.close(reading);
    return node;
  }

  private readDeclaration(reading: Reading): Made {
    let node: Made;
    switch (this.kinds[this.at]) {
      case 10:
        node = this.readCurriculum(this.open(reading, 17));
        break;
      case 12:
        node = this.readInstrument(this.open(reading, 19));
        break;
      case 16:
        node = this.readDimension(this.open(reading, 10));
        break;
      case 40:
        node = this.readSession(this.open(reading, 21));
        break;
      case 46:
        node = this.readFinding(this.open(reading, 16));
        break;
      case 55:
        node = this.readMetric(this.open(reading, 11));
        break;
      case 69:
        node = this.readWindow(this.open(reading, 13));
        break;
      case 71:
        node = this.readPlayer(this.open(reading, 18));
        break;
      case 73:
        node = this.readSource(this.open(reading, 20));
        break;
      case 91:
        node = this.readDrill(this.open(reading, 14));
        break;
      case 119:
        node = this.readClub(this.open(reading, 12));
        break;
      case 121:
        node = this.readPlan(this.open(reading, 15));
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readDimension(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "Dimension",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      name: undefined,
      left: undefined,
      operator: undefined,
      right: undefined,
      units: [],
    };
    this.take(16, reading, 23);
    node.name = this.readWord(this.open(reading, 25));
    if (this.kinds[this.at] === 183 && !this.startsNameOnNewLine()) {
      this.take(183, reading, 27);
      node.left = this.reference(node, "left", (at = this.open(reading, 29)), this.readWord(at));
      switch (this.kinds[this.at]) {
        case 184:
          this.take(184, reading, 33);
          node.operator = this.taken();
          break;
        case 185:
          this.take(185, reading, 34);
          node.operator = this.taken();
          break;
        default:
          throw GIVEN_UP;
      }
      node.right = this.reference(node, "right", (at = this.open(reading, 36)), this.readWord(at));
    }
    this.take(186, reading, 38);
    while (this.kinds[this.at] === 118) {
      this.adoptOneOf(this.readUnit(this.open(reading, 40)), node, "units", node.units);
    }
    this.take(187, reading, 41);
    this.close(reading);
    return node;
  }

  private readUnit(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "Unit",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      names: [],
      factor: undefined,
      base: undefined,
      zero: undefined,
    };
    this.take(118, reading, 43);
    switch (this.kinds[this.at]) {
      case 62: case 123: case 159: case 172: case 190: case 197:
        this.adoptOneOf(this.readUnitName(this.open(reading, 48)), node, "names", node.names);
        while (this.kinds[this.at] === 169) {
          this.take(169, reading, 50);
          this.adoptOneOf(this.readUnitName(this.open(reading, 52)), node, "names", node.names);
        }
        break;
      case 155:
        this.take(155, reading, 45);
        break;
      default:
        throw GIVEN_UP;
    }
    if (this.kinds[this.at] === 183 && !this.startsNameOnNewLine()) {
      this.take(183, reading, 54);
      this.take(200, reading, 56);
      node.factor = this.takenNumber();
      if (this.decideUnit1() && !this.startsNameOnNewLine()) {
        node.base = this.reference(node, "base", (at = this.open(reading, 59)), this.readUnitSign(at));
        if (this.kinds[this.at] === 83 && !this.startsNameOnNewLine()) {
          this.take(83, reading, 62);
          this.take(200, reading, 64);
          node.zero = this.takenNumber();
        }
      }
    }
    this.close(reading);
    return node;
  }

  private decideUnit1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 62: case 123: case 159: case 172: case 190: case 197:
        return true;
      default:
        return false;
    }
  }

  private readUnitName(reading: Reading): Made {
    const node: Made = {
      $type: "UnitName",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      name: undefined,
    };
    node.name = this.readUnitSign(this.open(reading, 66));
    this.close(reading);
    return node;
  }

  private readMetric(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "Metric",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      name: undefined,
      dimension: undefined,
      categories: [],
      statements: [],
    };
    this.take(55, reading, 68);
    node.name = this.readWord(this.open(reading, 70));
    this.take(170, reading, 71);
    switch (this.kinds[this.at]) {
      case 62: case 197:
        node.dimension = this.reference(node, "dimension", (at = this.open(reading, 74)), this.readWord(at));
        break;
      case 155:
        this.take(155, reading, 77);
        this.take(171, reading, 78);
        this.adoptOneOf(this.readCategory(this.open(reading, 80)), node, "categories", node.categories);
        while (this.kinds[this.at] === 188) {
          this.take(188, reading, 82);
          this.adoptOneOf(this.readCategory(this.open(reading, 84)), node, "categories", node.categories);
        }
        break;
      default:
        throw GIVEN_UP;
    }
    if (this.kinds[this.at] === 186 && !this.startsNameOnNewLine()) {
      this.take(186, reading, 86);
      while (this.decideMetric1()) {
        this.adoptOneOf(this.readMetricStatement(this.open(reading, 88)), node, "statements", node.statements);
      }
      this.take(187, reading, 89);
    }
    this.close(reading);
    return node;
  }

  private decideMetric1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 17: case 18: case 27: case 28: case 38: case 62: case 84: case 197:
        return true;
      default:
        return false;
    }
  }

  private readCategory(reading: Reading): Made {
    const node: Made = {
      $type: "Category",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      name: undefined,
    };
    node.name = this.readWord(this.open(reading, 91));
    this.close(reading);
    return node;
  }

  private readMetricStatement(reading: Reading): Made {
    let node: Made;
    switch (this.kinds[this.at]) {
      case 62: case 197:
        node = this.readCategoryRule(this.open(reading, 98));
        break;
      case 17:
        node = this.readPlausible(this.open(reading, 96));
        break;
      case 18:
        node = this.readEstimated(this.open(reading, 99));
        break;
      case 27:
        node = this.readPositive(this.open(reading, 94));
        break;
      case 28:
        node = this.readNegative(this.open(reading, 95));
        break;
      case 38:
        node = this.readFormula(this.open(reading, 97));
        break;
      case 84:
        node = this.readShownIn(this.open(reading, 93));
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readShownIn(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "ShownIn",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      unit: undefined,
      step: undefined,
    };
    this.take(84, reading, 101);
    this.take(172, reading, 102);
    switch (this.kinds[this.at]) {
      case 62: case 123: case 159: case 172: case 190: case 197:
        node.unit = this.reference(node, "unit", (at = this.open(reading, 106)), this.readUnitSign(at));
        break;
      case 155:
        this.take(155, reading, 104);
        break;
      default:
        throw GIVEN_UP;
    }
    this.take(173, reading, 108);
    this.take(200, reading, 110);
    node.step = this.takenNumber();
    this.close(reading);
    return node;
  }

  private readPositive(reading: Reading): Made {
    const node: Made = {
      $type: "Positive",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      words: [],
    };
    this.take(27, reading, 112);
    this.adoptOneOf(this.readDirection(this.open(reading, 114)), node, "words", node.words);
    if (this.kinds[this.at] === 188 && !this.startsNameOnNewLine()) {
      this.take(188, reading, 116);
      this.take(156, reading, 117);
      this.take(189, reading, 118);
      this.take(4, reading, 119);
      this.adoptOneOf(this.readHandedDirection(this.open(reading, 121)), node, "words", node.words);
    }
    this.close(reading);
    return node;
  }

  private readNegative(reading: Reading): Made {
    const node: Made = {
      $type: "Negative",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      words: [],
    };
    this.take(28, reading, 123);
    this.adoptOneOf(this.readDirection(this.open(reading, 125)), node, "words", node.words);
    if (this.kinds[this.at] === 188 && !this.startsNameOnNewLine()) {
      this.take(188, reading, 127);
      this.take(156, reading, 128);
      this.take(189, reading, 129);
      this.take(4, reading, 130);
      this.adoptOneOf(this.readHandedDirection(this.open(reading, 132)), node, "words", node.words);
    }
    this.close(reading);
    return node;
  }

  private readDirection(reading: Reading): Made {
    let node: Made;
    switch (this.decideDirection1()) {
      case 0:
        node = this.readFrameDirection(this.open(reading, 134));
        break;
      case 1:
        node = this.readHandedDirection(this.open(reading, 135));
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private decideDirection1(): number {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 62: case 197:
        switch (kinds[at + 1]) {
          default:
            return 0;
        }
      default:
        return -1;
    }
  }

  private readFrameDirection(reading: Reading): Made {
    const node: Made = {
      $type: "FrameDirection",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      name: undefined,
    };
    node.name = this.readWord(this.open(reading, 137));
    this.close(reading);
    return node;
  }

  private readHandedDirection(reading: Reading): Made {
    const node: Made = {
      $type: "HandedDirection",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      name: undefined,
    };
    node.name = this.readWord(this.open(reading, 139));
    this.close(reading);
    return node;
  }

  private readPlausible(reading: Reading): Made {
    const node: Made = {
      $type: "Plausible",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      low: undefined,
      high: undefined,
    };
    this.take(17, reading, 141);
    this.take(37, reading, 142);
    node.low = this.adopt(this.readQuantity(this.open(reading, 144)), node, "low");
    this.take(157, reading, 145);
    node.high = this.adopt(this.readQuantity(this.open(reading, 147)), node, "high");
    this.close(reading);
    return node;
  }

  private readFormula(reading: Reading): Made {
    const node: Made = {
      $type: "Formula",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      expression: undefined,
    };
    this.take(38, reading, 149);
    node.expression = this.adopt(this.readExpression(this.open(reading, 151)), node, "expression");
    this.close(reading);
    return node;
  }

  private readCategoryRule(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "CategoryRule",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      category: undefined,
      condition: undefined,
    };
    node.category = this.reference(node, "category", (at = this.open(reading, 154)), this.readWord(at));
    this.take(85, reading, 156);
    node.condition = this.adopt(this.readCondition(this.open(reading, 158)), node, "condition");
    this.close(reading);
    return node;
  }

  private readEstimated(reading: Reading): Made {
    const node: Made = {
      $type: "Estimated",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
    };
    this.take(18, reading, 162);
    this.take(174, reading, 163);
    this.take(158, reading, 164);
    this.take(56, reading, 165);
    this.take(86, reading, 166);
    this.close(reading);
    return node;
  }

  private readClub(reading: Reading): Made {
    const node: Made = {
      $type: "Club",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      name: undefined,
      spellings: [],
    };
    this.take(119, reading, 168);
    node.name = this.readWord(this.open(reading, 170));
    if (this.kinds[this.at] === 120 && !this.startsNameOnNewLine()) {
      this.take(120, reading, 172);
      this.take(201, reading, 174);
      node.spellings.push(this.takenText());
      while (this.kinds[this.at] === 188) {
        this.take(188, reading, 176);
        this.take(201, reading, 178);
        node.spellings.push(this.takenText());
      }
    }
    this.close(reading);
    return node;
  }

  private readPlan(reading: Reading): Made {
    const node: Made = {
      $type: "Plan",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      name: undefined,
      statements: [],
    };
    this.take(121, reading, 180);
    this.take(201, reading, 182);
    node.name = this.takenText();
    this.take(186, reading, 183);
    while (this.decidePlan1()) {
      this.adoptOneOf(this.readPlanStatement(this.open(reading, 185)), node, "statements", node.statements);
    }
    this.take(187, reading, 186);
    this.close(reading);
    return node;
  }

  private decidePlan1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 39: case 57: case 58: case 87: case 88: case 90: case 122: case 124: case 131: case 156:
        return true;
      default:
        return false;
    }
  }

  private readPlanStatement(reading: Reading): Made {
    let node: Made;
    switch (this.kinds[this.at]) {
      case 39:
        node = this.readCaution(this.open(reading, 192));
        break;
      case 57:
        node = this.readIntent(this.open(reading, 188));
        break;
      case 58:
        node = this.readDecisionLevel(this.open(reading, 193));
        break;
      case 87:
        node = this.readNeeds(this.open(reading, 191));
        break;
      case 88:
        node = this.readLoadLimit(this.open(reading, 194));
        break;
      case 90:
        node = this.readBlock(this.open(reading, 196));
        break;
      case 122:
        node = this.readPlanTime(this.open(reading, 190));
        break;
      case 124:
        node = this.readLooksFor(this.open(reading, 195));
        break;
      case 131:
        node = this.readNext(this.open(reading, 197));
        break;
      case 156:
        node = this.readForClubs(this.open(reading, 189));
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readIntent(reading: Reading): Made {
    const node: Made = {
      $type: "Intent",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      text: undefined,
    };
    this.take(57, reading, 199);
    this.take(201, reading, 201);
    node.text = this.takenText();
    this.close(reading);
    return node;
  }

  private readForClubs(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "ForClubs",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      clubs: [],
    };
    this.take(156, reading, 203);
    node.clubs.push(this.reference(node, "clubs", (at = this.open(reading, 205)), this.readWord(at)));
    while (this.kinds[this.at] === 188) {
      this.take(188, reading, 208);
      node.clubs.push(this.reference(node, "clubs", (at = this.open(reading, 210)), this.readWord(at)));
    }
    this.close(reading);
    return node;
  }

  private readPlanTime(reading: Reading): Made {
    const node: Made = {
      $type: "PlanTime",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      quantity: undefined,
    };
    this.take(122, reading, 213);
    node.quantity = this.adopt(this.readQuantity(this.open(reading, 215)), node, "quantity");
    this.close(reading);
    return node;
  }

  private readNeeds(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "Needs",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      metrics: [],
    };
    this.take(87, reading, 217);
    node.metrics.push(this.reference(node, "metrics", (at = this.open(reading, 219)), this.readWord(at)));
    while (this.kinds[this.at] === 188) {
      this.take(188, reading, 222);
      node.metrics.push(this.reference(node, "metrics", (at = this.open(reading, 224)), this.readWord(at)));
    }
    this.close(reading);
    return node;
  }

  private readCaution(reading: Reading): Made {
    const node: Made = {
      $type: "Caution",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      text: undefined,
    };
    this.take(39, reading, 227);
    this.take(201, reading, 229);
    node.text = this.takenText();
    this.close(reading);
    return node;
  }

  private readDecisionLevel(reading: Reading): Made {
    const node: Made = {
      $type: "DecisionLevel",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      level: undefined,
    };
    this.take(58, reading, 231);
    this.take(175, reading, 232);
    this.take(200, reading, 234);
    node.level = this.takenNumber();
    this.take(190, reading, 235);
    this.close(reading);
    return node;
  }

  private readLoadLimit(reading: Reading): Made {
    const node: Made = {
      $type: "LoadLimit",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      count: undefined,
      fullEffort: false,
      period: undefined,
    };
    this.take(88, reading, 237);
    this.take(200, reading, 239);
    node.count = this.takenNumber();
    if (this.kinds[this.at] === 7 && !this.startsNameOnNewLine()) {
      this.take(7, reading, 241);
      node.fullEffort = true;
    }
    switch (this.kinds[this.at]) {
      case 59:
        this.take(59, reading, 243);
        break;
      case 89:
        this.take(89, reading, 244);
        break;
      default:
        throw GIVEN_UP;
    }
    if ((this.kinds[this.at] === 172 || this.kinds[this.at] === 189) && !this.startsNameOnNewLine()) {
      switch (this.kinds[this.at]) {
        case 172:
          this.take(172, reading, 249);
          this.take(189, reading, 250);
          break;
        case 189:
          this.take(189, reading, 247);
          break;
        default:
          throw GIVEN_UP;
      }
      switch (this.kinds[this.at]) {
        case 40:
          this.take(40, reading, 253);
          node.period = this.taken();
          break;
        case 123:
          this.take(123, reading, 255);
          node.period = this.taken();
          break;
        case 159:
          this.take(159, reading, 254);
          node.period = this.taken();
          break;
        default:
          throw GIVEN_UP;
      }
    }
    this.close(reading);
    return node;
  }

  private readLooksFor(reading: Reading): Made {
    const node: Made = {
      $type: "LooksFor",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      findings: [],
    };
    this.take(124, reading, 257);
    this.take(156, reading, 258);
    node.findings.push(this.reference(node, "findings", this.take(201, reading, 260), this.takenText()));
    while (this.kinds[this.at] === 188) {
      this.take(188, reading, 263);
      node.findings.push(this.reference(node, "findings", this.take(201, reading, 265), this.takenText()));
    }
    this.close(reading);
    return node;
  }

  private readBlock(reading: Reading): Made {
    const node: Made = {
      $type: "Block",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      name: undefined,
      use: undefined,
      kind: undefined,
      statements: [],
    };
    this.take(90, reading, 268);
    this.take(201, reading, 270);
    node.name = this.takenText();
    if (this.kinds[this.at] === 125 && !this.startsNameOnNewLine()) {
      this.take(125, reading, 272);
      node.use = this.adopt(this.readDrillUse(this.open(reading, 274)), node, "use");
    }
    if (this.decideBlock1() && !this.startsNameOnNewLine()) {
      node.kind = this.readBlockKind(this.open(reading, 276));
    }
    if (this.kinds[this.at] === 186 && !this.startsNameOnNewLine()) {
      this.take(186, reading, 278);
      while (this.decideBlock2()) {
        this.adoptOneOf(this.readBlockStatement(this.open(reading, 280)), node, "statements", node.statements);
      }
      this.take(187, reading, 281);
    }
    this.close(reading);
    return node;
  }

  private decideBlock1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 19: case 20: case 29: case 30: case 41: case 42: case 60: case 61: case 127:
        return true;
      default:
        return false;
    }
  }

  private decideBlock2(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 39: case 43: case 44: case 62: case 63: case 66: case 94: case 122: case 160: case 175: case 197: case 200:
        return true;
      default:
        return false;
    }
  }

  private readDrillUse(reading: Reading): Made {
    const node: Made = {
      $type: "DrillUse",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      drill: undefined,
      arguments: [],
    };
    node.drill = this.reference(node, "drill", this.take(201, reading, 284), this.takenText());
    if (this.kinds[this.at] === 126 && !this.startsNameOnNewLine()) {
      this.take(126, reading, 287);
      this.adoptOneOf(this.readArgument(this.open(reading, 289)), node, "arguments", node.arguments);
      while (this.kinds[this.at] === 188) {
        this.take(188, reading, 291);
        this.adoptOneOf(this.readArgument(this.open(reading, 293)), node, "arguments", node.arguments);
      }
    }
    this.close(reading);
    return node;
  }

  private readArgument(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "Argument",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      parameter: undefined,
      value: undefined,
    };
    node.parameter = this.reference(node, "parameter", (at = this.open(reading, 296)), this.readWord(at));
    this.take(183, reading, 298);
    node.value = this.adopt(this.readArgumentValue(this.open(reading, 300)), node, "value");
    this.close(reading);
    return node;
  }

  private readArgumentValue(reading: Reading): Made {
    let node: Made;
    switch (this.decideArgumentValue1()) {
      case 0:
        node = this.readClubValue(this.open(reading, 302));
        break;
      case 1:
        node = this.readAmountValue(this.open(reading, 303));
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private decideArgumentValue1(): number {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 62:
        switch (kinds[at + 1]) {
          case 62: case 197:
            return 1;
          case 212:
            return 0;
          default:
            switch (kinds[at + 2]) {
              default:
                return 0;
            }
        }
      case 197:
        switch (kinds[at + 1]) {
          case 62: case 197:
            return 1;
          default:
            return 0;
        }
      case 200:
        return 1;
      default:
        return -1;
    }
  }

  private readClubValue(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "ClubValue",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      club: undefined,
    };
    node.club = this.reference(node, "club", (at = this.open(reading, 305)), this.readWord(at));
    this.close(reading);
    return node;
  }

  private readAmountValue(reading: Reading): Made {
    const node: Made = {
      $type: "AmountValue",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      quantity: undefined,
    };
    node.quantity = this.adopt(this.readQuantity(this.open(reading, 308)), node, "quantity");
    this.close(reading);
    return node;
  }

  private readDrill(reading: Reading): Made {
    const node: Made = {
      $type: "Drill",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      name: undefined,
      parameters: [],
      kind: undefined,
      statements: [],
    };
    this.take(91, reading, 310);
    this.take(201, reading, 312);
    node.name = this.takenText();
    if (this.kinds[this.at] === 191 && !this.startsNameOnNewLine()) {
      this.take(191, reading, 314);
      this.adoptOneOf(this.readParameter(this.open(reading, 316)), node, "parameters", node.parameters);
      while (this.kinds[this.at] === 188) {
        this.take(188, reading, 318);
        this.adoptOneOf(this.readParameter(this.open(reading, 320)), node, "parameters", node.parameters);
      }
      this.take(192, reading, 321);
    }
    if (this.decideDrill1() && !this.startsNameOnNewLine()) {
      node.kind = this.readBlockKind(this.open(reading, 323));
    }
    this.take(186, reading, 324);
    while (this.decideDrill2()) {
      this.adoptOneOf(this.readBlockStatement(this.open(reading, 326)), node, "statements", node.statements);
    }
    this.take(187, reading, 327);
    this.close(reading);
    return node;
  }

  private decideDrill1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 19: case 20: case 29: case 30: case 41: case 42: case 60: case 61: case 127:
        return true;
      default:
        return false;
    }
  }

  private decideDrill2(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 39: case 43: case 44: case 62: case 63: case 66: case 94: case 122: case 160: case 175: case 197: case 200:
        return true;
      default:
        return false;
    }
  }

  private readParameter(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "Parameter",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      name: undefined,
      isClub: false,
      dimension: undefined,
      value: undefined,
    };
    node.name = this.readWord(this.open(reading, 330));
    this.take(193, reading, 331);
    switch (this.kinds[this.at]) {
      case 62: case 197:
        node.dimension = this.reference(node, "dimension", (at = this.open(reading, 336)), this.readWord(at));
        break;
      case 119:
        this.take(119, reading, 334);
        node.isClub = true;
        break;
      default:
        throw GIVEN_UP;
    }
    if (this.kinds[this.at] === 183 && !this.startsNameOnNewLine()) {
      this.take(183, reading, 339);
      node.value = this.adopt(this.readArgumentValue(this.open(reading, 341)), node, "value");
    }
    this.close(reading);
    return node;
  }

  private readBlockKind(reading: Reading): string {
    let text = "";
    switch (this.kinds[this.at]) {
      case 19:
        this.take(19, reading, 349);
        text += this.taken();
        break;
      case 20:
        this.take(20, reading, 351);
        text += this.taken();
        break;
      case 29:
        this.take(29, reading, 344);
        text += this.taken();
        break;
      case 30:
        this.take(30, reading, 350);
        text += this.taken();
        break;
      case 41:
        this.take(41, reading, 343);
        text += this.taken();
        break;
      case 42:
        this.take(42, reading, 345);
        text += this.taken();
        break;
      case 60:
        this.take(60, reading, 346);
        text += this.taken();
        break;
      case 61:
        this.take(61, reading, 347);
        text += this.taken();
        break;
      case 127:
        this.take(127, reading, 348);
        text += this.taken();
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return text;
  }

  private readBlockStatement(reading: Reading): Made {
    let node: Made;
    switch (this.kinds[this.at]) {
      case 62: case 175: case 197: case 200:
        node = this.readShots(this.open(reading, 353));
        break;
      case 39:
        node = this.readCaution(this.open(reading, 355));
        break;
      case 43:
        node = this.readRequirement(this.open(reading, 359));
        break;
      case 44:
        node = this.readSuccess(this.open(reading, 361));
        break;
      case 63:
        node = this.readChange(this.open(reading, 356));
        break;
      case 66:
        node = this.readTarget(this.open(reading, 358));
        break;
      case 94:
        node = this.readLeaveOut(this.open(reading, 360));
        break;
      case 122:
        node = this.readPlanTime(this.open(reading, 354));
        break;
      case 160:
        node = this.readCue(this.open(reading, 357));
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readShots(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "Shots",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      open: false,
      count: undefined,
      club: undefined,
      effort: undefined,
    };
    if (this.kinds[this.at] === 175 && !this.startsNameOnNewLine()) {
      this.take(175, reading, 365);
      node.open = true;
      this.take(92, reading, 366);
    }
    node.count = this.adopt(this.readCount(this.open(reading, 368)), node, "count");
    switch (this.kinds[this.at]) {
      case 93:
        this.take(93, reading, 370);
        break;
      case 128:
        this.take(128, reading, 371);
        break;
      default:
        throw GIVEN_UP;
    }
    if (this.kinds[this.at] === 126 && !this.startsNameOnNewLine()) {
      this.take(126, reading, 373);
      node.club = this.reference(node, "club", (at = this.open(reading, 375)), this.readWord(at));
    }
    if (this.decideShots1() && !this.startsNameOnNewLine()) {
      this.take(175, reading, 378);
      node.effort = this.adopt(this.readCount(this.open(reading, 380)), node, "effort");
      this.take(190, reading, 381);
      this.take(62, reading, 382);
    }
    this.close(reading);
    return node;
  }

  private decideShots1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 175:
        switch (kinds[at + 1]) {
          case 62: case 197: case 200:
            switch (kinds[at + 2]) {
              case 190:
                switch (kinds[at + 3]) {
                  case 62:
                    return true;
                  default:
                    return false;
                }
              default:
                return false;
            }
          default:
            return false;
        }
      default:
        return false;
    }
  }

  private readChange(reading: Reading): Made {
    const node: Made = {
      $type: "Change",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      kind: undefined,
      text: undefined,
    };
    this.take(63, reading, 384);
    switch (this.kinds[this.at]) {
      case 21:
        this.take(21, reading, 390);
        node.kind = this.taken();
        break;
      case 64:
        this.take(64, reading, 387);
        node.kind = this.taken();
        break;
      case 65:
        this.take(65, reading, 389);
        node.kind = this.taken();
        break;
      case 129:
        this.take(129, reading, 388);
        node.kind = this.taken();
        break;
      case 130:
        this.take(130, reading, 391);
        node.kind = this.taken();
        break;
      default:
        throw GIVEN_UP;
    }
    this.take(201, reading, 393);
    node.text = this.takenText();
    this.close(reading);
    return node;
  }

  private readCue(reading: Reading): Made {
    const node: Made = {
      $type: "Cue",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      text: undefined,
    };
    this.take(160, reading, 395);
    this.take(201, reading, 397);
    node.text = this.takenText();
    this.close(reading);
    return node;
  }

  private readTarget(reading: Reading): Made {
    const node: Made = {
      $type: "Target",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      condition: undefined,
    };
    this.take(66, reading, 399);
    node.condition = this.adopt(this.readCondition(this.open(reading, 401)), node, "condition");
    this.close(reading);
    return node;
  }

  private readRequirement(reading: Reading): Made {
    const node: Made = {
      $type: "Requirement",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      condition: undefined,
    };
    this.take(43, reading, 403);
    node.condition = this.adopt(this.readCondition(this.open(reading, 405)), node, "condition");
    this.close(reading);
    return node;
  }

  private readLeaveOut(reading: Reading): Made {
    const node: Made = {
      $type: "LeaveOut",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      condition: undefined,
    };
    this.take(94, reading, 407);
    this.take(161, reading, 408);
    this.take(93, reading, 409);
    this.take(85, reading, 410);
    node.condition = this.adopt(this.readCondition(this.open(reading, 412)), node, "condition");
    this.close(reading);
    return node;
  }

  private readSuccess(reading: Reading): Made {
    const node: Made = {
      $type: "Success",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      criteria: [],
    };
    this.take(44, reading, 414);
    switch (this.kinds[this.at]) {
      case 52: case 62: case 72: case 81: case 82: case 109: case 110: case 111: case 148: case 149: case 162: case 168: case 175: case 197: case 200:
        this.adoptOneOf(this.readCriterion(this.open(reading, 422)), node, "criteria", node.criteria);
        break;
      case 186:
        this.take(186, reading, 417);
        while (this.decideSuccess1()) {
          this.adoptOneOf(this.readCriterion(this.open(reading, 419)), node, "criteria", node.criteria);
        }
        this.take(187, reading, 420);
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private decideSuccess1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 52: case 62: case 72: case 81: case 82: case 109: case 110: case 111: case 148: case 149: case 162: case 168: case 175: case 197: case 200:
        return true;
      default:
        return false;
    }
  }

  private readCriterion(reading: Reading): Made {
    let node: Made;
    switch (this.decideCriterion1()) {
      case 0:
        node = this.readCountCriterion(this.open(reading, 424));
        break;
      case 1:
        node = this.readShareCriterion(this.open(reading, 425));
        break;
      case 2:
        node = this.readRunCriterion(this.open(reading, 426));
        break;
      case 3:
        node = this.readStatisticCriterion(this.open(reading, 427));
        break;
      case 4:
        node = this.readEllipseCriterion(this.open(reading, 428));
        break;
      case 5:
        node = this.readChangeCriterion(this.open(reading, 429));
        break;
      case 6:
        node = this.readLoadCriterion(this.open(reading, 430));
        break;
      case 7:
        node = this.readGroupCriterion(this.open(reading, 431));
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private decideCriterion1(): number {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 52: case 72: case 81: case 109: case 148:
        switch (kinds[at + 1]) {
          case 62: case 197:
            switch (kinds[at + 2]) {
              case 112: case 113: case 114: case 115: case 116: case 117:
                return 5;
              case 37: case 77: case 83: case 107: case 175:
                return 3;
              default:
                return -1;
            }
          case 171:
            switch (kinds[at + 2]) {
              case 62: case 197:
                switch (kinds[at + 3]) {
                  case 112: case 113: case 114: case 115: case 116: case 117:
                    return 5;
                  case 37: case 77: case 83: case 107: case 175:
                    return 3;
                  default:
                    return -1;
                }
              default:
                return -1;
            }
          default:
            return -1;
        }
      case 110: case 111: case 149:
        return 4;
      case 62: case 197:
        switch (kinds[at + 1]) {
          case 112: case 113: case 114: case 115: case 116: case 117:
            return 5;
          case 179: case 180: case 181: case 182:
            switch (kinds[at + 2]) {
              case 15:
                switch (kinds[at + 3]) {
                  case 62: case 197:
                    switch (kinds[at + 4]) {
                      case 112: case 113: case 114: case 115: case 116: case 117:
                        return 5;
                      case 37: case 77: case 83: case 107: case 175:
                        return 3;
                      default:
                        return -1;
                    }
                  case 171:
                    switch (kinds[at + 4]) {
                      case 62: case 197:
                        switch (kinds[at + 5]) {
                          case 112: case 113: case 114: case 115: case 116: case 117:
                            return 5;
                          case 37: case 77: case 83: case 107: case 175:
                            return 3;
                          default:
                            return -1;
                        }
                      default:
                        return -1;
                    }
                  default:
                    return -1;
                }
              default:
                return -1;
            }
          case 171:
            return 7;
          case 172:
            return 2;
          default:
            return -1;
        }
      case 162: case 168:
        return 7;
      case 82:
        switch (kinds[at + 1]) {
          case 62: case 197: case 200:
            switch (kinds[at + 2]) {
              case 190:
                switch (kinds[at + 3]) {
                  case 62: case 197:
                    return 5;
                  case 171:
                    switch (kinds[at + 4]) {
                      case 62: case 197:
                        switch (kinds[at + 5]) {
                          case 112: case 113: case 114: case 115: case 116: case 117:
                            return 5;
                          case 108:
                            return 3;
                          default:
                            return -1;
                        }
                      default:
                        return -1;
                    }
                  default:
                    return -1;
                }
              default:
                return -1;
            }
          default:
            return -1;
        }
      case 175:
        switch (kinds[at + 1]) {
          case 92: case 147:
            switch (kinds[at + 2]) {
              case 62: case 197: case 200:
                switch (kinds[at + 3]) {
                  case 7: case 59: case 89:
                    return 6;
                  case 93: case 128: case 171:
                    return 0;
                  case 190:
                    return 1;
                  default:
                    return -1;
                }
              default:
                return -1;
            }
          default:
            return -1;
        }
      case 200:
        switch (kinds[at + 1]) {
          case 179: case 180: case 181: case 182:
            switch (kinds[at + 2]) {
              case 15:
                switch (kinds[at + 3]) {
                  case 62: case 197:
                    switch (kinds[at + 4]) {
                      case 112: case 113: case 114: case 115: case 116: case 117:
                        return 5;
                      case 37: case 77: case 83: case 107: case 175:
                        return 3;
                      default:
                        return -1;
                    }
                  case 171:
                    switch (kinds[at + 4]) {
                      case 62: case 197:
                        switch (kinds[at + 5]) {
                          case 112: case 113: case 114: case 115: case 116: case 117:
                            return 5;
                          case 37: case 77: case 83: case 107: case 175:
                            return 3;
                          default:
                            return -1;
                        }
                      default:
                        return -1;
                    }
                  default:
                    return -1;
                }
              default:
                return -1;
            }
          case 171:
            return 7;
          case 172:
            return 2;
          default:
            return -1;
        }
      default:
        return -1;
    }
  }

  private readNext(reading: Reading): Made {
    const node: Made = {
      $type: "Next",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      steps: [],
    };
    this.take(131, reading, 433);
    this.take(186, reading, 434);
    while ((this.kinds[this.at] === 45 || this.kinds[this.at] === 67 || this.kinds[this.at] === 132)) {
      this.adoptOneOf(this.readNextStep(this.open(reading, 436)), node, "steps", node.steps);
    }
    this.take(187, reading, 437);
    this.close(reading);
    return node;
  }

  private readNextStep(reading: Reading): Made {
    let node: Made;
    switch (this.kinds[this.at]) {
      case 45:
        node = this.readAdvance(this.open(reading, 439));
        break;
      case 67:
        node = this.readRepeat(this.open(reading, 440));
        break;
      case 132:
        node = this.readStepBack(this.open(reading, 441));
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readAdvance(reading: Reading): Made {
    const node: Made = {
      $type: "Advance",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      plan: undefined,
      when: undefined,
    };
    this.take(45, reading, 443);
    this.take(173, reading, 444);
    node.plan = this.reference(node, "plan", this.take(201, reading, 446), this.takenText());
    if ((this.kinds[this.at] === 22 || this.kinds[this.at] === 134) && !this.startsNameOnNewLine()) {
      node.when = this.adopt(this.readNextCondition(this.open(reading, 449)), node, "when");
    }
    this.close(reading);
    return node;
  }

  private readRepeat(reading: Reading): Made {
    const node: Made = {
      $type: "Repeat",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      when: undefined,
    };
    this.take(67, reading, 453);
    if ((this.kinds[this.at] === 22 || this.kinds[this.at] === 134) && !this.startsNameOnNewLine()) {
      node.when = this.adopt(this.readNextCondition(this.open(reading, 455)), node, "when");
    }
    this.close(reading);
    return node;
  }

  private readStepBack(reading: Reading): Made {
    const node: Made = {
      $type: "StepBack",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      plan: undefined,
      when: undefined,
    };
    this.take(132, reading, 457);
    this.take(133, reading, 458);
    this.take(173, reading, 459);
    node.plan = this.reference(node, "plan", this.take(201, reading, 461), this.takenText());
    if ((this.kinds[this.at] === 22 || this.kinds[this.at] === 134) && !this.startsNameOnNewLine()) {
      node.when = this.adopt(this.readNextCondition(this.open(reading, 464)), node, "when");
    }
    this.close(reading);
    return node;
  }

  private readNextCondition(reading: Reading): Made {
    const node: Made = {
      $type: "NextCondition",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      tests: [],
      otherwise: false,
    };
    switch (this.kinds[this.at]) {
      case 22:
        this.take(22, reading, 475);
        node.otherwise = true;
        break;
      case 134:
        this.take(134, reading, 467);
        this.adoptOneOf(this.readNextTest(this.open(reading, 469)), node, "tests", node.tests);
        while (this.kinds[this.at] === 157) {
          this.take(157, reading, 471);
          this.adoptOneOf(this.readNextTest(this.open(reading, 473)), node, "tests", node.tests);
        }
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readNextTest(reading: Reading): Made {
    const node: Made = {
      $type: "NextTest",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      every: false,
      any: false,
      block: undefined,
      verdicts: [],
    };
    switch (this.kinds[this.at]) {
      case 95:
        this.take(95, reading, 480);
        node.every = true;
        this.take(135, reading, 481);
        break;
      case 162:
        this.take(162, reading, 484);
        node.any = true;
        this.take(135, reading, 485);
        break;
      case 201:
        node.block = this.reference(node, "block", this.take(201, reading, 487), this.takenText());
        break;
      default:
        throw GIVEN_UP;
    }
    this.take(170, reading, 489);
    node.verdicts.push(this.readVerdictWord(this.open(reading, 491)));
    while (this.kinds[this.at] === 169) {
      this.take(169, reading, 493);
      node.verdicts.push(this.readVerdictWord(this.open(reading, 495)));
    }
    this.close(reading);
    return node;
  }

  private readVerdictWord(reading: Reading): string {
    let text = "";
    switch (this.kinds[this.at]) {
      case 5:
        this.take(5, reading, 500);
        text += this.taken();
        break;
      case 23:
        this.take(23, reading, 499);
        text += this.taken();
        break;
      case 68:
        this.take(68, reading, 498);
        text += this.taken();
        break;
      case 163:
        this.take(163, reading, 497);
        text += this.taken();
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return text;
  }

  private readWindow(reading: Reading): Made {
    const node: Made = {
      $type: "Window",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      name: undefined,
      variants: [],
    };
    this.take(69, reading, 502);
    this.take(201, reading, 504);
    node.name = this.takenText();
    switch (this.kinds[this.at]) {
      case 170:
        this.adoptOneOf(this.readOnlyVariant(this.open(reading, 507)), node, "variants", node.variants);
        break;
      case 186:
        this.take(186, reading, 509);
        while ((this.kinds[this.at] === 156 || this.kinds[this.at] === 170 || this.kinds[this.at] === 175)) {
          this.adoptOneOf(this.readWindowVariant(this.open(reading, 511)), node, "variants", node.variants);
        }
        this.take(187, reading, 512);
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readOnlyVariant(reading: Reading): Made {
    const node: Made = {
      $type: "WindowVariant",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      condition: undefined,
      clubs: [],
      level: undefined,
    };
    this.take(170, reading, 514);
    node.condition = this.adopt(this.readCondition(this.open(reading, 516)), node, "condition");
    this.close(reading);
    return node;
  }

  private readWindowVariant(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "WindowVariant",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      condition: undefined,
      clubs: [],
      level: undefined,
    };
    if (this.kinds[this.at] === 156 && !this.startsNameOnNewLine()) {
      this.take(156, reading, 519);
      node.clubs.push(this.reference(node, "clubs", (at = this.open(reading, 521)), this.readWord(at)));
      while (this.kinds[this.at] === 188) {
        this.take(188, reading, 524);
        node.clubs.push(this.reference(node, "clubs", (at = this.open(reading, 526)), this.readWord(at)));
      }
    }
    if (this.kinds[this.at] === 175 && !this.startsNameOnNewLine()) {
      this.take(175, reading, 529);
      this.take(96, reading, 530);
      this.take(201, reading, 532);
      node.level = this.takenText();
    }
    this.take(170, reading, 533);
    node.condition = this.adopt(this.readCondition(this.open(reading, 535)), node, "condition");
    this.close(reading);
    return node;
  }

  private readFinding(reading: Reading): Made {
    const node: Made = {
      $type: "Finding",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      name: undefined,
      statements: [],
    };
    this.take(46, reading, 537);
    this.take(201, reading, 539);
    node.name = this.takenText();
    this.take(186, reading, 540);
    while (this.decideFinding1()) {
      this.adoptOneOf(this.readFindingStatement(this.open(reading, 542)), node, "statements", node.statements);
    }
    this.take(187, reading, 543);
    this.close(reading);
    return node;
  }

  private decideFinding1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 47: case 97: case 134: case 138: case 156: case 164:
        return true;
      default:
        return false;
    }
  }

  private readFindingStatement(reading: Reading): Made {
    let node: Made;
    switch (this.kinds[this.at]) {
      case 47:
        node = this.readSuspect(this.open(reading, 547));
        break;
      case 97:
        node = this.readCheckFor(this.open(reading, 548));
        break;
      case 134:
        node = this.readWhen(this.open(reading, 546));
        break;
      case 138:
        node = this.readNote(this.open(reading, 550));
        break;
      case 156:
        node = this.readFindingClubs(this.open(reading, 545));
        break;
      case 164:
        node = this.readTryDrill(this.open(reading, 549));
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readFindingClubs(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "ForClubs",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      clubs: [],
    };
    this.take(156, reading, 552);
    node.clubs.push(this.reference(node, "clubs", (at = this.open(reading, 554)), this.readWord(at)));
    while (this.kinds[this.at] === 188) {
      this.take(188, reading, 557);
      node.clubs.push(this.reference(node, "clubs", (at = this.open(reading, 559)), this.readWord(at)));
    }
    this.close(reading);
    return node;
  }

  private readWhen(reading: Reading): Made {
    const node: Made = {
      $type: "When",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      criterion: undefined,
    };
    this.take(134, reading, 562);
    node.criterion = this.adopt(this.readCriterion(this.open(reading, 564)), node, "criterion");
    this.close(reading);
    return node;
  }

  private readSuspect(reading: Reading): Made {
    const node: Made = {
      $type: "Suspect",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      text: undefined,
    };
    this.take(47, reading, 566);
    this.take(201, reading, 568);
    node.text = this.takenText();
    this.close(reading);
    return node;
  }

  private readCheckFor(reading: Reading): Made {
    const node: Made = {
      $type: "CheckFor",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      text: undefined,
    };
    this.take(97, reading, 570);
    this.take(201, reading, 572);
    node.text = this.takenText();
    this.close(reading);
    return node;
  }

  private readTryDrill(reading: Reading): Made {
    const node: Made = {
      $type: "TryDrill",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      use: undefined,
    };
    this.take(164, reading, 574);
    node.use = this.adopt(this.readDrillUse(this.open(reading, 576)), node, "use");
    this.close(reading);
    return node;
  }

  private readCurriculum(reading: Reading): Made {
    const node: Made = {
      $type: "Curriculum",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      name: undefined,
      statements: [],
    };
    this.take(10, reading, 578);
    this.take(201, reading, 580);
    node.name = this.takenText();
    this.take(186, reading, 581);
    while ((this.kinds[this.at] === 57 || this.kinds[this.at] === 132 || this.kinds[this.at] === 138)) {
      this.adoptOneOf(this.readCurriculumStatement(this.open(reading, 583)), node, "statements", node.statements);
    }
    this.take(187, reading, 584);
    this.close(reading);
    return node;
  }

  private readCurriculumStatement(reading: Reading): Made {
    let node: Made;
    switch (this.kinds[this.at]) {
      case 57:
        node = this.readCurriculumIntent(this.open(reading, 586));
        break;
      case 132:
        node = this.readCurriculumStep(this.open(reading, 587));
        break;
      case 138:
        node = this.readNote(this.open(reading, 588));
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readCurriculumIntent(reading: Reading): Made {
    const node: Made = {
      $type: "Intent",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      text: undefined,
    };
    this.take(57, reading, 590);
    this.take(201, reading, 592);
    node.text = this.takenText();
    this.close(reading);
    return node;
  }

  private readCurriculumStep(reading: Reading): Made {
    const node: Made = {
      $type: "CurriculumStep",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      plan: undefined,
      after: [],
      statements: [],
    };
    this.take(132, reading, 594);
    node.plan = this.reference(node, "plan", this.take(201, reading, 596), this.takenText());
    if (this.kinds[this.at] === 98 && !this.startsNameOnNewLine()) {
      this.take(98, reading, 599);
      node.after.push(this.reference(node, "after", this.take(201, reading, 601), this.takenText()));
      while (this.kinds[this.at] === 188) {
        this.take(188, reading, 604);
        node.after.push(this.reference(node, "after", this.take(201, reading, 606), this.takenText()));
      }
    }
    if (this.kinds[this.at] === 186 && !this.startsNameOnNewLine()) {
      this.take(186, reading, 609);
      while ((this.kinds[this.at] === 70 || this.kinds[this.at] === 136 || this.kinds[this.at] === 138)) {
        this.adoptOneOf(this.readCurriculumStepStatement(this.open(reading, 611)), node, "statements", node.statements);
      }
      this.take(187, reading, 612);
    }
    this.close(reading);
    return node;
  }

  private readCurriculumStepStatement(reading: Reading): Made {
    let node: Made;
    switch (this.kinds[this.at]) {
      case 70:
        node = this.readReview(this.open(reading, 615));
        break;
      case 136:
        node = this.readGate(this.open(reading, 614));
        break;
      case 138:
        node = this.readNote(this.open(reading, 616));
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readGate(reading: Reading): Made {
    const node: Made = {
      $type: "Gate",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      block: undefined,
      plan: undefined,
      times: undefined,
    };
    this.take(136, reading, 618);
    if (this.kinds[this.at] === 90 && !this.startsNameOnNewLine()) {
      this.take(90, reading, 620);
      node.block = this.reference(node, "block", this.take(201, reading, 622), this.takenText());
      this.take(171, reading, 624);
    }
    node.plan = this.reference(node, "plan", this.take(201, reading, 626), this.takenText());
    this.take(163, reading, 628);
    if (this.kinds[this.at] === 172 && !this.startsNameOnNewLine()) {
      this.take(172, reading, 630);
      this.take(200, reading, 632);
      node.times = this.takenNumber();
      switch (this.kinds[this.at]) {
        case 31:
          this.take(31, reading, 634);
          break;
        case 40:
          this.take(40, reading, 635);
          break;
        default:
          throw GIVEN_UP;
      }
    }
    this.close(reading);
    return node;
  }

  private readReview(reading: Reading): Made {
    const node: Made = {
      $type: "Review",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      intervals: [],
    };
    this.take(70, reading, 637);
    this.take(98, reading, 638);
    this.adoptOneOf(this.readQuantity(this.open(reading, 640)), node, "intervals", node.intervals);
    while (this.kinds[this.at] === 188) {
      this.take(188, reading, 642);
      this.adoptOneOf(this.readQuantity(this.open(reading, 644)), node, "intervals", node.intervals);
    }
    this.close(reading);
    return node;
  }

  private readPlayer(reading: Reading): Made {
    const node: Made = {
      $type: "Player",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      name: undefined,
      statements: [],
    };
    this.take(71, reading, 646);
    this.take(201, reading, 648);
    node.name = this.takenText();
    this.take(186, reading, 649);
    while (this.decidePlayer1()) {
      this.adoptOneOf(this.readPlayerStatement(this.open(reading, 651)), node, "statements", node.statements);
    }
    this.take(187, reading, 652);
    this.close(reading);
    return node;
  }

  private decidePlayer1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 6: case 8: case 88: case 96: case 99: case 138:
        return true;
      default:
        return false;
    }
  }

  private readPlayerStatement(reading: Reading): Made {
    let node: Made;
    switch (this.kinds[this.at]) {
      case 6: case 8:
        node = this.readHandedness(this.open(reading, 654));
        break;
      case 88:
        node = this.readLoadLimit(this.open(reading, 657));
        break;
      case 96:
        node = this.readPlayerLevel(this.open(reading, 655));
        break;
      case 99:
        node = this.readUsual(this.open(reading, 656));
        break;
      case 138:
        node = this.readNote(this.open(reading, 658));
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readPlayerLevel(reading: Reading): Made {
    const node: Made = {
      $type: "PlayerLevel",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      level: undefined,
    };
    this.take(96, reading, 660);
    this.take(201, reading, 662);
    node.level = this.takenText();
    this.close(reading);
    return node;
  }

  private readUsual(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "Usual",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      metric: undefined,
      amount: undefined,
      spread: undefined,
      club: undefined,
      shots: undefined,
    };
    this.take(99, reading, 664);
    node.metric = this.reference(node, "metric", (at = this.open(reading, 666)), this.readWord(at));
    node.amount = this.adopt(this.readQuantity(this.open(reading, 669)), node, "amount");
    if (this.kinds[this.at] === 72 && !this.startsNameOnNewLine()) {
      this.take(72, reading, 671);
      node.spread = this.adopt(this.readQuantity(this.open(reading, 673)), node, "spread");
    }
    if (this.kinds[this.at] === 126 && !this.startsNameOnNewLine()) {
      this.take(126, reading, 675);
      node.club = this.reference(node, "club", (at = this.open(reading, 677)), this.readWord(at));
    }
    if (this.kinds[this.at] === 137 && !this.startsNameOnNewLine()) {
      this.take(137, reading, 680);
      this.take(200, reading, 682);
      node.shots = this.takenNumber();
      this.take(93, reading, 683);
    }
    this.close(reading);
    return node;
  }

  private readHandedness(reading: Reading): Made {
    const node: Made = {
      $type: "Handedness",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      hand: undefined,
    };
    switch (this.kinds[this.at]) {
      case 6:
        this.take(6, reading, 686);
        node.hand = this.taken();
        break;
      case 8:
        this.take(8, reading, 687);
        node.hand = this.taken();
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readNote(reading: Reading): Made {
    const node: Made = {
      $type: "Note",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      text: undefined,
    };
    this.take(138, reading, 689);
    this.take(201, reading, 691);
    node.text = this.takenText();
    this.close(reading);
    return node;
  }

  private readSource(reading: Reading): Made {
    const node: Made = {
      $type: "Source",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      name: undefined,
      statements: [],
    };
    this.take(73, reading, 693);
    this.take(201, reading, 695);
    node.name = this.takenText();
    this.take(186, reading, 696);
    while (this.decideSource1()) {
      this.adoptOneOf(this.readSourceStatement(this.open(reading, 698)), node, "statements", node.statements);
    }
    this.take(187, reading, 699);
    this.close(reading);
    return node;
  }

  private decideSource1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 24: case 26: case 48: case 75: case 76: case 93: case 138: case 176:
        return true;
      default:
        return false;
    }
  }

  private readSourceStatement(reading: Reading): Made {
    let node: Made;
    switch (this.kinds[this.at]) {
      case 24:
        node = this.readSeparator(this.open(reading, 701));
        break;
      case 26:
        node = this.readThousandsMark(this.open(reading, 703));
        break;
      case 48:
        node = this.readDecimalMark(this.open(reading, 702));
        break;
      case 75:
        node = this.readHeaderRow(this.open(reading, 705));
        break;
      case 76:
        node = this.readColumn(this.open(reading, 706));
        break;
      case 93:
        node = this.readShotOrder(this.open(reading, 707));
        break;
      case 138:
        node = this.readNote(this.open(reading, 708));
        break;
      case 176:
        node = this.readBlanks(this.open(reading, 704));
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readSeparator(reading: Reading): Made {
    const node: Made = {
      $type: "Separator",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      mark: undefined,
    };
    this.take(24, reading, 710);
    switch (this.kinds[this.at]) {
      case 25:
        this.take(25, reading, 714);
        node.mark = this.taken();
        break;
      case 74:
        this.take(74, reading, 717);
        node.mark = this.taken();
        break;
      case 100:
        this.take(100, reading, 713);
        node.mark = this.taken();
        break;
      case 139:
        this.take(139, reading, 716);
        node.mark = this.taken();
        break;
      case 165:
        this.take(165, reading, 715);
        node.mark = this.taken();
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readDecimalMark(reading: Reading): Made {
    const node: Made = {
      $type: "DecimalMark",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      mark: undefined,
    };
    this.take(48, reading, 719);
    switch (this.kinds[this.at]) {
      case 100:
        this.take(100, reading, 722);
        node.mark = this.taken();
        break;
      case 101:
        this.take(101, reading, 723);
        node.mark = this.taken();
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readThousandsMark(reading: Reading): Made {
    const node: Made = {
      $type: "ThousandsMark",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      mark: undefined,
    };
    this.take(26, reading, 725);
    switch (this.kinds[this.at]) {
      case 11:
        this.take(11, reading, 731);
        node.mark = this.taken();
        break;
      case 100:
        this.take(100, reading, 728);
        node.mark = this.taken();
        break;
      case 101:
        this.take(101, reading, 729);
        node.mark = this.taken();
        break;
      case 102:
        this.take(102, reading, 730);
        node.mark = this.taken();
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readBlanks(reading: Reading): Made {
    const node: Made = {
      $type: "Blanks",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      texts: [],
    };
    this.take(176, reading, 733);
    this.take(49, reading, 734);
    this.take(170, reading, 735);
    this.take(201, reading, 737);
    node.texts.push(this.takenText());
    while (this.kinds[this.at] === 188) {
      this.take(188, reading, 739);
      this.take(201, reading, 741);
      node.texts.push(this.takenText());
    }
    this.close(reading);
    return node;
  }

  private readHeaderRow(reading: Reading): Made {
    const node: Made = {
      $type: "HeaderRow",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      row: undefined,
    };
    this.take(75, reading, 743);
    this.take(166, reading, 744);
    this.take(200, reading, 746);
    node.row = this.takenNumber();
    this.close(reading);
    return node;
  }

  private readColumn(reading: Reading): Made {
    const node: Made = {
      $type: "Column",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      header: undefined,
      content: undefined,
    };
    this.take(76, reading, 748);
    this.take(201, reading, 750);
    node.header = this.takenText();
    node.content = this.adopt(this.readColumnContent(this.open(reading, 752)), node, "content");
    this.close(reading);
    return node;
  }

  private readColumnContent(reading: Reading): Made {
    let node: Made;
    switch (this.decideColumnContent1()) {
      case 0:
        node = this.readMetricColumn(this.open(reading, 754));
        break;
      case 1:
        node = this.readClubColumn(this.open(reading, 755));
        break;
      case 2:
        node = this.readBlockColumn(this.open(reading, 756));
        break;
      case 3:
        node = this.readPlayerColumn(this.open(reading, 757));
        break;
      case 4:
        node = this.readDateColumn(this.open(reading, 758));
        break;
      case 5:
        node = this.readSessionColumn(this.open(reading, 759));
        break;
      case 6:
        node = this.readTimeColumn(this.open(reading, 760));
        break;
      case 7:
        node = this.readExclusionColumn(this.open(reading, 761));
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private decideColumnContent1(): number {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 32:
        return 7;
      case 170:
        switch (kinds[at + 1]) {
          case 62: case 197:
            return 0;
          case 40:
            return 5;
          case 71:
            return 3;
          case 90:
            return 2;
          case 119:
            return 1;
          case 122:
            return 6;
          case 140:
            return 4;
          default:
            return -1;
        }
      default:
        return -1;
    }
  }

  private readMetricColumn(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "MetricColumn",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      metric: undefined,
      unit: undefined,
      positive: undefined,
      sidesIn: undefined,
      spellings: [],
    };
    this.take(170, reading, 763);
    node.metric = this.reference(node, "metric", (at = this.open(reading, 765)), this.readWord(at));
    if (this.kinds[this.at] === 172 && !this.startsNameOnNewLine()) {
      this.take(172, reading, 768);
      node.unit = this.reference(node, "unit", (at = this.open(reading, 770)), this.readUnitSign(at));
    }
    if (this.kinds[this.at] === 27 && !this.startsNameOnNewLine()) {
      this.take(27, reading, 773);
      node.positive = this.reference(node, "positive", (at = this.open(reading, 775)), this.readWord(at));
    }
    if (this.kinds[this.at] === 103 && !this.startsNameOnNewLine()) {
      this.take(103, reading, 778);
      this.take(172, reading, 779);
      this.take(201, reading, 781);
      node.sidesIn = this.takenText();
    }
    if (this.kinds[this.at] === 85 && !this.startsNameOnNewLine()) {
      this.take(85, reading, 783);
      this.adoptOneOf(this.readSpelling(this.open(reading, 785)), node, "spellings", node.spellings);
      while (this.kinds[this.at] === 188) {
        this.take(188, reading, 787);
        this.adoptOneOf(this.readSpelling(this.open(reading, 789)), node, "spellings", node.spellings);
      }
    }
    this.close(reading);
    return node;
  }

  private readSpelling(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "Spelling",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      text: undefined,
      meaning: undefined,
    };
    this.take(201, reading, 792);
    node.text = this.takenText();
    this.take(170, reading, 793);
    node.meaning = this.reference(node, "meaning", (at = this.open(reading, 795)), this.readWord(at));
    this.close(reading);
    return node;
  }

  private readClubColumn(reading: Reading): Made {
    const node: Made = {
      $type: "ClubColumn",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      spellings: [],
    };
    this.take(170, reading, 800);
    this.take(119, reading, 801);
    if (this.kinds[this.at] === 85 && !this.startsNameOnNewLine()) {
      this.take(85, reading, 803);
      this.adoptOneOf(this.readClubSpelling(this.open(reading, 805)), node, "spellings", node.spellings);
      while (this.kinds[this.at] === 188) {
        this.take(188, reading, 807);
        this.adoptOneOf(this.readClubSpelling(this.open(reading, 809)), node, "spellings", node.spellings);
      }
    }
    this.close(reading);
    return node;
  }

  private readClubSpelling(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "ClubSpelling",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      text: undefined,
      club: undefined,
    };
    this.take(201, reading, 812);
    node.text = this.takenText();
    this.take(170, reading, 813);
    node.club = this.reference(node, "club", (at = this.open(reading, 815)), this.readWord(at));
    this.close(reading);
    return node;
  }

  private readBlockColumn(reading: Reading): Made {
    const node: Made = {
      $type: "BlockColumn",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
    };
    this.take(170, reading, 820);
    this.take(90, reading, 821);
    this.close(reading);
    return node;
  }

  private readPlayerColumn(reading: Reading): Made {
    const node: Made = {
      $type: "PlayerColumn",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      spellings: [],
    };
    this.take(170, reading, 825);
    this.take(71, reading, 826);
    if (this.kinds[this.at] === 85 && !this.startsNameOnNewLine()) {
      this.take(85, reading, 828);
      this.adoptOneOf(this.readPlayerSpelling(this.open(reading, 830)), node, "spellings", node.spellings);
      while (this.kinds[this.at] === 188) {
        this.take(188, reading, 832);
        this.adoptOneOf(this.readPlayerSpelling(this.open(reading, 834)), node, "spellings", node.spellings);
      }
    }
    this.close(reading);
    return node;
  }

  private readPlayerSpelling(reading: Reading): Made {
    const node: Made = {
      $type: "PlayerSpelling",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      text: undefined,
      player: undefined,
    };
    this.take(201, reading, 837);
    node.text = this.takenText();
    this.take(170, reading, 838);
    node.player = this.reference(node, "player", this.take(201, reading, 840), this.takenText());
    this.close(reading);
    return node;
  }

  private readDateColumn(reading: Reading): Made {
    const node: Made = {
      $type: "DateColumn",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      order: undefined,
    };
    this.take(170, reading, 845);
    this.take(140, reading, 846);
    if (this.kinds[this.at] === 177 && !this.startsNameOnNewLine()) {
      this.take(177, reading, 848);
      node.order = this.readDateOrder(this.open(reading, 850));
    }
    this.close(reading);
    return node;
  }

  private readDateOrder(reading: Reading): string {
    let text = "";
    switch (this.kinds[this.at]) {
      case 0:
        this.take(0, reading, 852);
        text += this.taken();
        break;
      case 1:
        this.take(1, reading, 853);
        text += this.taken();
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return text;
  }

  private readSessionColumn(reading: Reading): Made {
    const node: Made = {
      $type: "SessionColumn",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
    };
    this.take(170, reading, 857);
    this.take(40, reading, 858);
    this.close(reading);
    return node;
  }

  private readTimeColumn(reading: Reading): Made {
    const node: Made = {
      $type: "TimeColumn",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
    };
    this.take(170, reading, 862);
    this.take(122, reading, 863);
    this.close(reading);
    return node;
  }

  private readExclusionColumn(reading: Reading): Made {
    const node: Made = {
      $type: "ExclusionColumn",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      texts: [],
    };
    this.take(32, reading, 865);
    this.take(134, reading, 866);
    this.take(201, reading, 868);
    node.texts.push(this.takenText());
    while (this.kinds[this.at] === 188) {
      this.take(188, reading, 870);
      this.take(201, reading, 872);
      node.texts.push(this.takenText());
    }
    this.close(reading);
    return node;
  }

  private readShotOrder(reading: Reading): Made {
    const node: Made = {
      $type: "ShotOrder",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      header: undefined,
    };
    this.take(93, reading, 874);
    this.take(172, reading, 875);
    this.take(104, reading, 876);
    this.take(171, reading, 877);
    this.take(201, reading, 879);
    node.header = this.takenText();
    this.close(reading);
    return node;
  }

  private readSession(reading: Reading): Made {
    const node: Made = {
      $type: "Session",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      name: undefined,
      statements: [],
    };
    this.take(40, reading, 881);
    this.take(201, reading, 883);
    node.name = this.takenText();
    this.take(186, reading, 884);
    while (this.decideSession1()) {
      this.adoptOneOf(this.readSessionStatement(this.open(reading, 886)), node, "statements", node.statements);
    }
    this.take(187, reading, 887);
    this.close(reading);
    return node;
  }

  private decideSession1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 9: case 12: case 33: case 34: case 35: case 71: case 90: case 121: case 138: case 140: case 141: case 142: case 146:
        return true;
      default:
        return false;
    }
  }

  private readSessionStatement(reading: Reading): Made {
    let node: Made;
    switch (this.kinds[this.at]) {
      case 9:
        node = this.readAirTemperature(this.open(reading, 896));
        break;
      case 12:
        node = this.readSessionInstrument(this.open(reading, 893));
        break;
      case 33:
        node = this.readAirPressure(this.open(reading, 897));
        break;
      case 34:
        node = this.readAltitude(this.open(reading, 898));
        break;
      case 35:
        node = this.readHumidity(this.open(reading, 899));
        break;
      case 71:
        node = this.readSessionPlayer(this.open(reading, 890));
        break;
      case 90:
        node = this.readBlockStart(this.open(reading, 894));
        break;
      case 121:
        node = this.readSessionPlan(this.open(reading, 889));
        break;
      case 138:
        node = this.readNote(this.open(reading, 901));
        break;
      case 140:
        node = this.readSessionDate(this.open(reading, 891));
        break;
      case 141:
        node = this.readSessionData(this.open(reading, 892));
        break;
      case 142:
        node = this.readWind(this.open(reading, 895));
        break;
      case 146:
        node = this.readBall(this.open(reading, 900));
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readSessionPlan(reading: Reading): Made {
    const node: Made = {
      $type: "SessionPlan",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      plan: undefined,
    };
    this.take(121, reading, 903);
    node.plan = this.reference(node, "plan", this.take(201, reading, 905), this.takenText());
    this.close(reading);
    return node;
  }

  private readSessionPlayer(reading: Reading): Made {
    const node: Made = {
      $type: "SessionPlayer",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      player: undefined,
    };
    this.take(71, reading, 908);
    node.player = this.reference(node, "player", this.take(201, reading, 910), this.takenText());
    this.close(reading);
    return node;
  }

  private readSessionDate(reading: Reading): Made {
    const node: Made = {
      $type: "SessionDate",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      date: undefined,
    };
    this.take(140, reading, 913);
    this.take(198, reading, 915);
    node.date = this.taken();
    this.close(reading);
    return node;
  }

  private readSessionData(reading: Reading): Made {
    const node: Made = {
      $type: "SessionData",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      path: undefined,
      source: undefined,
    };
    this.take(141, reading, 917);
    this.take(201, reading, 919);
    node.path = this.takenText();
    this.take(125, reading, 920);
    node.source = this.reference(node, "source", this.take(201, reading, 922), this.takenText());
    this.close(reading);
    return node;
  }

  private readSessionInstrument(reading: Reading): Made {
    const node: Made = {
      $type: "SessionInstrument",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      instrument: undefined,
    };
    this.take(12, reading, 925);
    node.instrument = this.reference(node, "instrument", this.take(201, reading, 927), this.takenText());
    this.close(reading);
    return node;
  }

  private readBlockStart(reading: Reading): Made {
    const node: Made = {
      $type: "BlockStart",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      block: undefined,
      row: undefined,
      time: undefined,
      file: undefined,
    };
    this.take(90, reading, 930);
    node.block = this.reference(node, "block", this.take(201, reading, 932), this.takenText());
    this.take(125, reading, 934);
    switch (this.kinds[this.at]) {
      case 166:
        this.take(166, reading, 937);
        this.take(200, reading, 939);
        node.row = this.takenNumber();
        break;
      case 199:
        this.take(199, reading, 941);
        node.time = this.taken();
        break;
      default:
        throw GIVEN_UP;
    }
    if (this.kinds[this.at] === 171 && !this.startsNameOnNewLine()) {
      this.take(171, reading, 943);
      this.take(201, reading, 945);
      node.file = this.takenText();
    }
    this.close(reading);
    return node;
  }

  private readWind(reading: Reading): Made {
    const node: Made = {
      $type: "Wind",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      calm: false,
      parts: [],
    };
    this.take(142, reading, 947);
    switch (this.kinds[this.at]) {
      case 62: case 197: case 200:
        this.adoptOneOf(this.readWindPart(this.open(reading, 953)), node, "parts", node.parts);
        if (this.kinds[this.at] === 157 && !this.startsNameOnNewLine()) {
          this.take(157, reading, 955);
          this.adoptOneOf(this.readWindPart(this.open(reading, 957)), node, "parts", node.parts);
        }
        break;
      case 143:
        this.take(143, reading, 950);
        node.calm = true;
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readWindPart(reading: Reading): Made {
    const node: Made = {
      $type: "WindPart",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      speed: undefined,
      side: undefined,
    };
    node.speed = this.adopt(this.readQuantity(this.open(reading, 960)), node, "speed");
    switch (this.kinds[this.at]) {
      case 2:
        this.take(2, reading, 965);
        node.side = this.taken();
        break;
      case 3:
        this.take(3, reading, 966);
        node.side = this.taken();
        break;
      case 144:
        this.take(144, reading, 963);
        node.side = this.taken();
        break;
      case 145:
        this.take(145, reading, 964);
        node.side = this.taken();
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readAirTemperature(reading: Reading): Made {
    const node: Made = {
      $type: "AirTemperature",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      minus: false,
      quantity: undefined,
    };
    this.take(9, reading, 968);
    if (this.kinds[this.at] === 105 && !this.startsNameOnNewLine()) {
      this.take(105, reading, 970);
      node.minus = true;
    }
    node.quantity = this.adopt(this.readQuantity(this.open(reading, 972)), node, "quantity");
    this.close(reading);
    return node;
  }

  private readAirPressure(reading: Reading): Made {
    const node: Made = {
      $type: "AirPressure",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      quantity: undefined,
    };
    this.take(33, reading, 974);
    node.quantity = this.adopt(this.readQuantity(this.open(reading, 976)), node, "quantity");
    this.close(reading);
    return node;
  }

  private readAltitude(reading: Reading): Made {
    const node: Made = {
      $type: "Altitude",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      quantity: undefined,
    };
    this.take(34, reading, 978);
    node.quantity = this.adopt(this.readQuantity(this.open(reading, 980)), node, "quantity");
    this.close(reading);
    return node;
  }

  private readHumidity(reading: Reading): Made {
    const node: Made = {
      $type: "Humidity",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      share: undefined,
    };
    this.take(35, reading, 982);
    this.take(200, reading, 984);
    node.share = this.takenNumber();
    this.take(190, reading, 985);
    this.close(reading);
    return node;
  }

  private readBall(reading: Reading): Made {
    const node: Made = {
      $type: "Ball",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      name: undefined,
      share: undefined,
    };
    this.take(146, reading, 987);
    this.take(201, reading, 989);
    node.name = this.takenText();
    if (this.kinds[this.at] === 50 && !this.startsNameOnNewLine()) {
      this.take(50, reading, 991);
      this.take(200, reading, 993);
      node.share = this.takenNumber();
      this.take(190, reading, 994);
    }
    this.close(reading);
    return node;
  }

  private readInstrument(reading: Reading): Made {
    const node: Made = {
      $type: "Instrument",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      name: undefined,
      statements: [],
    };
    this.take(12, reading, 996);
    this.take(201, reading, 998);
    node.name = this.takenText();
    this.take(186, reading, 999);
    while ((this.kinds[this.at] === 36 || this.kinds[this.at] === 106 || this.kinds[this.at] === 138)) {
      this.adoptOneOf(this.readInstrumentStatement(this.open(reading, 1001)), node, "statements", node.statements);
    }
    this.take(187, reading, 1002);
    this.close(reading);
    return node;
  }

  private readInstrumentStatement(reading: Reading): Made {
    let node: Made;
    switch (this.kinds[this.at]) {
      case 36:
        node = this.readCoverage(this.open(reading, 1005));
        break;
      case 106:
        node = this.readUncertainty(this.open(reading, 1004));
        break;
      case 138:
        node = this.readNote(this.open(reading, 1006));
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readUncertainty(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "Uncertainty",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      metric: undefined,
      parts: [],
      clubs: [],
    };
    this.take(106, reading, 1008);
    node.metric = this.reference(node, "metric", (at = this.open(reading, 1010)), this.readWord(at));
    this.take(77, reading, 1012);
    this.adoptOneOf(this.readUncertaintyPart(this.open(reading, 1014)), node, "parts", node.parts);
    if (this.kinds[this.at] === 157 && !this.startsNameOnNewLine()) {
      this.take(157, reading, 1016);
      this.adoptOneOf(this.readUncertaintyPart(this.open(reading, 1018)), node, "parts", node.parts);
    }
    if (this.kinds[this.at] === 156 && !this.startsNameOnNewLine()) {
      this.take(156, reading, 1020);
      node.clubs.push(this.reference(node, "clubs", (at = this.open(reading, 1022)), this.readWord(at)));
      while (this.kinds[this.at] === 188) {
        this.take(188, reading, 1025);
        node.clubs.push(this.reference(node, "clubs", (at = this.open(reading, 1027)), this.readWord(at)));
      }
    }
    this.close(reading);
    return node;
  }

  private readUncertaintyPart(reading: Reading): Made {
    const node: Made = {
      $type: "UncertaintyPart",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      quantity: undefined,
      kind: undefined,
    };
    node.quantity = this.adopt(this.readQuantity(this.open(reading, 1031)), node, "quantity");
    switch (this.kinds[this.at]) {
      case 13:
        this.take(13, reading, 1035);
        node.kind = this.taken();
        break;
      case 61:
        this.take(61, reading, 1034);
        node.kind = this.taken();
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readCoverage(reading: Reading): Made {
    const node: Made = {
      $type: "Coverage",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      share: undefined,
      factor: undefined,
      limits: false,
    };
    this.take(36, reading, 1037);
    switch (this.kinds[this.at]) {
      case 78:
        this.take(78, reading, 1044);
        this.take(200, reading, 1046);
        node.factor = this.takenNumber();
        break;
      case 79:
        this.take(79, reading, 1048);
        node.limits = true;
        break;
      case 200:
        this.take(200, reading, 1041);
        node.share = this.takenNumber();
        this.take(190, reading, 1042);
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readWord(reading: Reading): string {
    let text = "";
    switch (this.kinds[this.at]) {
      case 62:
        this.take(62, reading, 1051);
        text += this.taken();
        break;
      case 197:
        this.take(197, reading, 1050);
        text += this.taken();
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return text;
  }

  private readUnitSign(reading: Reading): string {
    let text = "";
    switch (this.kinds[this.at]) {
      case 62: case 197:
        text += this.readWord(this.open(reading, 1053));
        break;
      case 123:
        this.take(123, reading, 1057);
        text += this.taken();
        break;
      case 159:
        this.take(159, reading, 1056);
        text += this.taken();
        break;
      case 172:
        this.take(172, reading, 1054);
        text += this.taken();
        break;
      case 190:
        this.take(190, reading, 1055);
        text += this.taken();
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return text;
  }

  private readQuantity(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "Quantity",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      value: undefined,
      unit: undefined,
      direction: undefined,
      parameter: undefined,
    };
    switch (this.kinds[this.at]) {
      case 62: case 197:
        node.parameter = this.reference(node, "parameter", (at = this.open(reading, 1071)), this.readWord(at));
        if ((this.kinds[this.at] === 62 || this.kinds[this.at] === 197) && !this.startsNameOnNewLine()) {
          node.direction = this.reference(node, "direction", (at = this.open(reading, 1074)), this.readWord(at));
        }
        break;
      case 200:
        this.take(200, reading, 1061);
        node.value = this.takenNumber();
        if (this.decideQuantity1() && !this.startsNameOnNewLine()) {
          node.unit = this.reference(node, "unit", (at = this.open(reading, 1064)), this.readUnitSign(at));
          if ((this.kinds[this.at] === 62 || this.kinds[this.at] === 197) && !this.startsNameOnNewLine()) {
            node.direction = this.reference(node, "direction", (at = this.open(reading, 1067)), this.readWord(at));
          }
        }
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private decideQuantity1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 62: case 123: case 159: case 172: case 190: case 197:
        return true;
      default:
        return false;
    }
  }

  private readCount(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "Count",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      value: undefined,
      parameter: undefined,
    };
    switch (this.kinds[this.at]) {
      case 62: case 197:
        node.parameter = this.reference(node, "parameter", (at = this.open(reading, 1080)), this.readWord(at));
        break;
      case 200:
        this.take(200, reading, 1078);
        node.value = this.takenNumber();
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readCondition(reading: Reading): Made {
    const node: Made = {
      $type: "Condition",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      alternatives: [],
    };
    this.adoptOneOf(this.readConjunction(this.open(reading, 1084)), node, "alternatives", node.alternatives);
    while (this.kinds[this.at] === 169) {
      this.take(169, reading, 1086);
      this.adoptOneOf(this.readConjunction(this.open(reading, 1088)), node, "alternatives", node.alternatives);
    }
    this.close(reading);
    return node;
  }

  private readConjunction(reading: Reading): Made {
    const node: Made = {
      $type: "Conjunction",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      tests: [],
    };
    this.adoptOneOf(this.readShotTest(this.open(reading, 1091)), node, "tests", node.tests);
    while (this.kinds[this.at] === 157) {
      this.take(157, reading, 1093);
      this.adoptOneOf(this.readShotTest(this.open(reading, 1095)), node, "tests", node.tests);
    }
    this.close(reading);
    return node;
  }

  private readShotTest(reading: Reading): Made {
    let node: Made;
    switch (this.decideShotTest1()) {
      case 0:
        node = this.readNumberTest(this.open(reading, 1097));
        break;
      case 1:
        node = this.readCategoryTest(this.open(reading, 1098));
        break;
      case 2:
        node = this.readWindowTest(this.open(reading, 1099));
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private decideShotTest1(): number {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 51: case 80:
        return 2;
      case 62: case 197:
        switch (kinds[at + 1]) {
          case 37: case 77: case 83: case 107: case 175:
            return 0;
          case 170:
            return 1;
          default:
            return -1;
        }
      default:
        return -1;
    }
  }

  private readNumberTest(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "NumberTest",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      metric: undefined,
      range: undefined,
    };
    node.metric = this.reference(node, "metric", (at = this.open(reading, 1102)), this.readWord(at));
    node.range = this.adopt(this.readRange(this.open(reading, 1105)), node, "range");
    this.close(reading);
    return node;
  }

  private readCategoryTest(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "CategoryTest",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      metric: undefined,
      categories: [],
    };
    node.metric = this.reference(node, "metric", (at = this.open(reading, 1108)), this.readWord(at));
    this.take(170, reading, 1110);
    node.categories.push(this.reference(node, "categories", (at = this.open(reading, 1112)), this.readWord(at)));
    while (this.decideCategoryTest1()) {
      this.take(169, reading, 1115);
      node.categories.push(this.reference(node, "categories", (at = this.open(reading, 1117)), this.readWord(at)));
    }
    this.close(reading);
    return node;
  }

  private decideCategoryTest1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 169:
        switch (kinds[at + 1]) {
          case 62: case 197:
            return true;
          default:
            return false;
        }
      default:
        return false;
    }
  }

  private readWindowTest(reading: Reading): Made {
    const node: Made = {
      $type: "WindowTest",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      inside: false,
      window: undefined,
    };
    switch (this.kinds[this.at]) {
      case 51:
        this.take(51, reading, 1123);
        break;
      case 80:
        this.take(80, reading, 1122);
        node.inside = true;
        break;
      default:
        throw GIVEN_UP;
    }
    node.window = this.reference(node, "window", this.take(201, reading, 1125), this.takenText());
    this.close(reading);
    return node;
  }

  private readRange(reading: Reading): Made {
    let node: Made;
    switch (this.decideRange1()) {
      case 0:
        node = this.readWithin(this.open(reading, 1128));
        break;
      case 1:
        node = this.readBetween(this.open(reading, 1129));
        break;
      case 2:
        node = this.readAtLeast(this.open(reading, 1130));
        break;
      case 3:
        node = this.readAtMost(this.open(reading, 1131));
        break;
      case 4:
        node = this.readBelow(this.open(reading, 1132));
        break;
      case 5:
        node = this.readAbove(this.open(reading, 1133));
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private decideRange1(): number {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 37:
        return 1;
      case 77:
        return 0;
      case 83:
        return 5;
      case 107:
        return 4;
      case 175:
        switch (kinds[at + 1]) {
          case 92:
            return 2;
          case 147:
            return 3;
          default:
            return -1;
        }
      default:
        return -1;
    }
  }

  private readWithin(reading: Reading): Made {
    const node: Made = {
      $type: "Within",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      symmetric: false,
      tolerance: undefined,
      centre: undefined,
    };
    this.take(77, reading, 1135);
    if ((this.kinds[this.at] === 167 || this.kinds[this.at] === 194) && !this.startsNameOnNewLine()) {
      switch (this.kinds[this.at]) {
        case 167:
          this.take(167, reading, 1140);
          node.symmetric = true;
          break;
        case 194:
          this.take(194, reading, 1138);
          node.symmetric = true;
          break;
        default:
          throw GIVEN_UP;
      }
    }
    node.tolerance = this.adopt(this.readQuantity(this.open(reading, 1142)), node, "tolerance");
    if (this.kinds[this.at] === 171 && !this.startsNameOnNewLine()) {
      this.take(171, reading, 1144);
      node.centre = this.adopt(this.readQuantity(this.open(reading, 1146)), node, "centre");
    }
    this.close(reading);
    return node;
  }

  private readBetween(reading: Reading): Made {
    const node: Made = {
      $type: "Between",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      low: undefined,
      high: undefined,
    };
    this.take(37, reading, 1148);
    node.low = this.adopt(this.readQuantity(this.open(reading, 1150)), node, "low");
    this.take(157, reading, 1151);
    node.high = this.adopt(this.readQuantity(this.open(reading, 1153)), node, "high");
    this.close(reading);
    return node;
  }

  private readAtLeast(reading: Reading): Made {
    const node: Made = {
      $type: "AtLeast",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      limit: undefined,
    };
    this.take(175, reading, 1155);
    this.take(92, reading, 1156);
    node.limit = this.adopt(this.readQuantity(this.open(reading, 1158)), node, "limit");
    this.close(reading);
    return node;
  }

  private readAtMost(reading: Reading): Made {
    const node: Made = {
      $type: "AtMost",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      limit: undefined,
    };
    this.take(175, reading, 1160);
    this.take(147, reading, 1161);
    node.limit = this.adopt(this.readQuantity(this.open(reading, 1163)), node, "limit");
    this.close(reading);
    return node;
  }

  private readBelow(reading: Reading): Made {
    const node: Made = {
      $type: "Below",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      limit: undefined,
    };
    this.take(107, reading, 1165);
    node.limit = this.adopt(this.readQuantity(this.open(reading, 1167)), node, "limit");
    this.close(reading);
    return node;
  }

  private readAbove(reading: Reading): Made {
    const node: Made = {
      $type: "Above",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      limit: undefined,
    };
    this.take(83, reading, 1169);
    node.limit = this.adopt(this.readQuantity(this.open(reading, 1171)), node, "limit");
    this.close(reading);
    return node;
  }

  private readSubject(reading: Reading): Made {
    let node: Made;
    switch (this.kinds[this.at]) {
      case 51: case 80:
        node = this.readInWindow(this.open(reading, 1175));
        break;
      case 126:
        node = this.readMeeting(this.open(reading, 1174));
        break;
      case 178:
        node = this.readOnTarget(this.open(reading, 1173));
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readOnTarget(reading: Reading): Made {
    const node: Made = {
      $type: "OnTarget",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
    };
    this.take(178, reading, 1179);
    this.take(66, reading, 1180);
    this.close(reading);
    return node;
  }

  private readMeeting(reading: Reading): Made {
    const node: Made = {
      $type: "Meeting",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      condition: undefined,
    };
    this.take(126, reading, 1182);
    node.condition = this.adopt(this.readCondition(this.open(reading, 1184)), node, "condition");
    this.close(reading);
    return node;
  }

  private readInWindow(reading: Reading): Made {
    const node: Made = {
      $type: "InWindow",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      test: undefined,
    };
    node.test = this.adopt(this.readWindowTest(this.open(reading, 1186)), node, "test");
    this.close(reading);
    return node;
  }

  private readConfidence(reading: Reading): Made {
    const node: Made = {
      $type: "Confidence",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      level: undefined,
    };
    this.take(175, reading, 1188);
    this.take(200, reading, 1190);
    node.level = this.takenNumber();
    this.take(190, reading, 1191);
    this.take(14, reading, 1192);
    this.close(reading);
    return node;
  }

  private readExpression(reading: Reading): Made {
    let node: Made;
    node = this.readBinaryExpression(this.open(reading, 1193));
    this.close(reading);
    return node;
  }

  private readBinaryExpression(reading: Reading): Made {
    const operands = [this.linked(this.readOperand(this.open(reading, 1194)))];
    const operators: string[] = [];
    while (this.decideBinaryExpression1()) {
      switch (this.kinds[this.at]) {
        case 184:
          this.take(184, reading, 1195);
          break;
        case 185:
          this.take(185, reading, 1195);
          break;
        case 195:
          this.take(195, reading, 1195);
          break;
        case 196:
          this.take(196, reading, 1195);
          break;
        default:
          throw GIVEN_UP;
      }
      operators.push(this.taken());
      operands.push(this.linked(this.readOperand(this.open(reading, 1194))));
    }
    return this.chain("BinaryExpression", operands, operators, {"*":0,"/":0,"+":1,"-":1}, reading);
  }

  private decideBinaryExpression1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 184: case 185: case 195: case 196:
        return true;
      default:
        return false;
    }
  }

  private readOperand(reading: Reading): Made {
    let node: Made;
    switch (this.decideOperand1()) {
      case 0:
        node = this.readMetricOperand(this.open(reading, 1197));
        break;
      case 1:
        node = this.readQuantityOperand(this.open(reading, 1198));
        break;
      case 2:
        this.take(191, reading, 1200);
        node = this.readExpression(this.open(reading, 1201));
        this.take(192, reading, 1202);
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private decideOperand1(): number {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 62:
        switch (kinds[at + 1]) {
          case 62: case 197:
            return 1;
          case 212:
            return 0;
          default:
            switch (kinds[at + 2]) {
              default:
                return 0;
            }
        }
      case 191:
        return 2;
      case 197:
        switch (kinds[at + 1]) {
          case 62: case 197:
            return 1;
          default:
            return 0;
        }
      case 200:
        return 1;
      default:
        return -1;
    }
  }

  private readMetricOperand(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "MetricOperand",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      metric: undefined,
    };
    node.metric = this.reference(node, "metric", (at = this.open(reading, 1204)), this.readWord(at));
    this.close(reading);
    return node;
  }

  private readQuantityOperand(reading: Reading): Made {
    const node: Made = {
      $type: "QuantityOperand",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      quantity: undefined,
    };
    node.quantity = this.adopt(this.readQuantity(this.open(reading, 1207)), node, "quantity");
    this.close(reading);
    return node;
  }

  private readCountCriterion(reading: Reading): Made {
    const node: Made = {
      $type: "CountCriterion",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      bound: undefined,
      count: undefined,
      outOf: undefined,
      subject: undefined,
      confidence: undefined,
    };
    this.take(175, reading, 1209);
    switch (this.kinds[this.at]) {
      case 92:
        this.take(92, reading, 1212);
        node.bound = this.taken();
        break;
      case 147:
        this.take(147, reading, 1213);
        node.bound = this.taken();
        break;
      default:
        throw GIVEN_UP;
    }
    node.count = this.adopt(this.readCount(this.open(reading, 1215)), node, "count");
    if (this.kinds[this.at] === 171 && !this.startsNameOnNewLine()) {
      this.take(171, reading, 1217);
      node.outOf = this.adopt(this.readCount(this.open(reading, 1219)), node, "outOf");
    }
    switch (this.kinds[this.at]) {
      case 93:
        this.take(93, reading, 1221);
        break;
      case 128:
        this.take(128, reading, 1222);
        break;
      default:
        throw GIVEN_UP;
    }
    node.subject = this.adopt(this.readSubject(this.open(reading, 1224)), node, "subject");
    if (this.decideCountCriterion1() && !this.startsNameOnNewLine()) {
      node.confidence = this.adopt(this.readConfidence(this.open(reading, 1226)), node, "confidence");
    }
    this.close(reading);
    return node;
  }

  private decideCountCriterion1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 175:
        switch (kinds[at + 1]) {
          case 200:
            switch (kinds[at + 2]) {
              case 190:
                switch (kinds[at + 3]) {
                  case 14:
                    return true;
                  default:
                    return false;
                }
              default:
                return false;
            }
          default:
            return false;
        }
      default:
        return false;
    }
  }

  private readShareCriterion(reading: Reading): Made {
    const node: Made = {
      $type: "ShareCriterion",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      bound: undefined,
      share: undefined,
      subject: undefined,
      confidence: undefined,
    };
    this.take(175, reading, 1228);
    switch (this.kinds[this.at]) {
      case 92:
        this.take(92, reading, 1231);
        node.bound = this.taken();
        break;
      case 147:
        this.take(147, reading, 1232);
        node.bound = this.taken();
        break;
      default:
        throw GIVEN_UP;
    }
    node.share = this.adopt(this.readCount(this.open(reading, 1234)), node, "share");
    this.take(190, reading, 1235);
    this.take(171, reading, 1236);
    this.take(93, reading, 1237);
    node.subject = this.adopt(this.readSubject(this.open(reading, 1239)), node, "subject");
    if (this.decideShareCriterion1() && !this.startsNameOnNewLine()) {
      node.confidence = this.adopt(this.readConfidence(this.open(reading, 1241)), node, "confidence");
    }
    this.close(reading);
    return node;
  }

  private decideShareCriterion1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 175:
        switch (kinds[at + 1]) {
          case 200:
            switch (kinds[at + 2]) {
              case 190:
                switch (kinds[at + 3]) {
                  case 14:
                    return true;
                  default:
                    return false;
                }
              default:
                return false;
            }
          default:
            return false;
        }
      default:
        return false;
    }
  }

  private readRunCriterion(reading: Reading): Made {
    const node: Made = {
      $type: "RunCriterion",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      length: undefined,
      subject: undefined,
      confidence: undefined,
    };
    node.length = this.adopt(this.readCount(this.open(reading, 1244)), node, "length");
    this.take(172, reading, 1245);
    this.take(189, reading, 1246);
    this.take(166, reading, 1247);
    node.subject = this.adopt(this.readSubject(this.open(reading, 1249)), node, "subject");
    if (this.decideRunCriterion1() && !this.startsNameOnNewLine()) {
      node.confidence = this.adopt(this.readConfidence(this.open(reading, 1251)), node, "confidence");
    }
    this.close(reading);
    return node;
  }

  private decideRunCriterion1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 175:
        switch (kinds[at + 1]) {
          case 200:
            switch (kinds[at + 2]) {
              case 190:
                switch (kinds[at + 3]) {
                  case 14:
                    return true;
                  default:
                    return false;
                }
              default:
                return false;
            }
          default:
            return false;
        }
      default:
        return false;
    }
  }

  private readStatisticCriterion(reading: Reading): Made {
    let node: Made;
    switch (this.kinds[this.at]) {
      case 52: case 62: case 72: case 81: case 109: case 148: case 197: case 200:
        node = this.readSingleStatistic(this.open(reading, 1253));
        break;
      case 82:
        node = this.readSpanStatistic(this.open(reading, 1254));
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readSingleStatistic(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "StatisticCriterion",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      statistic: undefined,
      metric: undefined,
      range: undefined,
      confidence: undefined,
    };
    node.statistic = this.adopt(this.readStatistic(this.open(reading, 1257)), node, "statistic");
    if (this.kinds[this.at] === 171 && !this.startsNameOnNewLine()) {
      this.take(171, reading, 1258);
    }
    node.metric = this.reference(node, "metric", (at = this.open(reading, 1260)), this.readWord(at));
    node.range = this.adopt(this.readRange(this.open(reading, 1263)), node, "range");
    if (this.decideSingleStatistic1() && !this.startsNameOnNewLine()) {
      node.confidence = this.adopt(this.readConfidence(this.open(reading, 1265)), node, "confidence");
    }
    this.close(reading);
    return node;
  }

  private decideSingleStatistic1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 175:
        switch (kinds[at + 1]) {
          case 200:
            switch (kinds[at + 2]) {
              case 190:
                switch (kinds[at + 3]) {
                  case 14:
                    return true;
                  default:
                    return false;
                }
              default:
                return false;
            }
          default:
            return false;
        }
      default:
        return false;
    }
  }

  private readSpanStatistic(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "StatisticCriterion",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      statistic: undefined,
      metric: undefined,
      range: undefined,
      confidence: undefined,
    };
    node.statistic = this.adopt(this.readSpan(this.open(reading, 1268)), node, "statistic");
    this.take(171, reading, 1269);
    node.metric = this.reference(node, "metric", (at = this.open(reading, 1271)), this.readWord(at));
    this.take(108, reading, 1273);
    node.range = this.adopt(this.readRange(this.open(reading, 1275)), node, "range");
    if (this.decideSpanStatistic1() && !this.startsNameOnNewLine()) {
      node.confidence = this.adopt(this.readConfidence(this.open(reading, 1277)), node, "confidence");
    }
    this.close(reading);
    return node;
  }

  private decideSpanStatistic1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 175:
        switch (kinds[at + 1]) {
          case 200:
            switch (kinds[at + 2]) {
              case 190:
                switch (kinds[at + 3]) {
                  case 14:
                    return true;
                  default:
                    return false;
                }
              default:
                return false;
            }
          default:
            return false;
        }
      default:
        return false;
    }
  }

  private readStatistic(reading: Reading): Made {
    let node: Made;
    switch (this.kinds[this.at]) {
      case 52: case 72: case 81: case 109: case 148:
        node = this.readSummary(this.open(reading, 1279));
        break;
      case 62: case 197: case 200:
        node = this.readPercentile(this.open(reading, 1280));
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readSummary(reading: Reading): Made {
    const node: Made = {
      $type: "Summary",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      name: undefined,
    };
    switch (this.kinds[this.at]) {
      case 52:
        this.take(52, reading, 1283);
        node.name = this.taken();
        break;
      case 72:
        this.take(72, reading, 1285);
        node.name = this.taken();
        break;
      case 81:
        this.take(81, reading, 1284);
        node.name = this.taken();
        break;
      case 109:
        this.take(109, reading, 1287);
        node.name = this.taken();
        break;
      case 148:
        this.take(148, reading, 1286);
        node.name = this.taken();
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readPercentile(reading: Reading): Made {
    const node: Made = {
      $type: "Percentile",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      share: undefined,
    };
    node.share = this.adopt(this.readCount(this.open(reading, 1290)), node, "share");
    switch (this.kinds[this.at]) {
      case 179:
        this.take(179, reading, 1292);
        break;
      case 180:
        this.take(180, reading, 1293);
        break;
      case 181:
        this.take(181, reading, 1294);
        break;
      case 182:
        this.take(182, reading, 1295);
        break;
      default:
        throw GIVEN_UP;
    }
    this.take(15, reading, 1296);
    this.close(reading);
    return node;
  }

  private readSpan(reading: Reading): Made {
    const node: Made = {
      $type: "Span",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      share: undefined,
    };
    this.take(82, reading, 1298);
    node.share = this.adopt(this.readCount(this.open(reading, 1300)), node, "share");
    this.take(190, reading, 1301);
    this.close(reading);
    return node;
  }

  private readEllipseCriterion(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "EllipseCriterion",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      measure: undefined,
      share: undefined,
      first: undefined,
      second: undefined,
      range: undefined,
      confidence: undefined,
    };
    switch (this.kinds[this.at]) {
      case 110: case 111:
        switch (this.kinds[this.at]) {
          case 110:
            this.take(110, reading, 1309);
            node.measure = this.taken();
            break;
          case 111:
            this.take(111, reading, 1310);
            node.measure = this.taken();
            break;
          default:
            throw GIVEN_UP;
        }
        this.take(150, reading, 1311);
        break;
      case 149:
        this.take(149, reading, 1305);
        node.measure = this.taken();
        break;
      default:
        throw GIVEN_UP;
    }
    this.take(171, reading, 1312);
    this.take(158, reading, 1313);
    node.share = this.adopt(this.readCount(this.open(reading, 1315)), node, "share");
    this.take(190, reading, 1316);
    this.take(53, reading, 1317);
    this.take(171, reading, 1318);
    node.first = this.reference(node, "first", (at = this.open(reading, 1320)), this.readWord(at));
    this.take(157, reading, 1322);
    node.second = this.reference(node, "second", (at = this.open(reading, 1324)), this.readWord(at));
    node.range = this.adopt(this.readRange(this.open(reading, 1327)), node, "range");
    if (this.decideEllipseCriterion1() && !this.startsNameOnNewLine()) {
      node.confidence = this.adopt(this.readConfidence(this.open(reading, 1329)), node, "confidence");
    }
    this.close(reading);
    return node;
  }

  private decideEllipseCriterion1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 175:
        switch (kinds[at + 1]) {
          case 200:
            switch (kinds[at + 2]) {
              case 190:
                switch (kinds[at + 3]) {
                  case 14:
                    return true;
                  default:
                    return false;
                }
              default:
                return false;
            }
          default:
            return false;
        }
      default:
        return false;
    }
  }

  private readChangeCriterion(reading: Reading): Made {
    let at: Reading;
    const node: Made = {
      $type: "ChangeCriterion",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      statistic: undefined,
      metric: undefined,
      movement: undefined,
      against: undefined,
      confidence: undefined,
    };
    if (this.decideChangeCriterion1() && !this.startsNameOnNewLine()) {
      node.statistic = this.adopt(this.readChangedStatistic(this.open(reading, 1333)), node, "statistic");
      if (this.kinds[this.at] === 171 && !this.startsNameOnNewLine()) {
        this.take(171, reading, 1334);
      }
    }
    node.metric = this.reference(node, "metric", (at = this.open(reading, 1336)), this.readWord(at));
    node.movement = this.adopt(this.readMovement(this.open(reading, 1339)), node, "movement");
    this.take(54, reading, 1340);
    node.against = this.adopt(this.readAgainst(this.open(reading, 1342)), node, "against");
    if (this.decideChangeCriterion2() && !this.startsNameOnNewLine()) {
      node.confidence = this.adopt(this.readConfidence(this.open(reading, 1344)), node, "confidence");
    }
    this.close(reading);
    return node;
  }

  private decideChangeCriterion1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 52: case 72: case 81: case 82: case 109: case 148: case 200:
        return true;
      case 62: case 197:
        switch (kinds[at + 1]) {
          case 179: case 180: case 181: case 182:
            return true;
          default:
            return false;
        }
      default:
        return false;
    }
  }

  private decideChangeCriterion2(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 175:
        switch (kinds[at + 1]) {
          case 200:
            switch (kinds[at + 2]) {
              case 190:
                switch (kinds[at + 3]) {
                  case 14:
                    return true;
                  default:
                    return false;
                }
              default:
                return false;
            }
          default:
            return false;
        }
      default:
        return false;
    }
  }

  private readChangedStatistic(reading: Reading): Made {
    let node: Made;
    switch (this.kinds[this.at]) {
      case 52: case 72: case 81: case 109: case 148:
        node = this.readSummary(this.open(reading, 1346));
        break;
      case 62: case 197: case 200:
        node = this.readPercentile(this.open(reading, 1347));
        break;
      case 82:
        node = this.readSpan(this.open(reading, 1348));
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readMovement(reading: Reading): Made {
    let node: Made;
    switch (this.kinds[this.at]) {
      case 112: case 113:
        node = this.readGain(this.open(reading, 1350));
        break;
      case 114: case 115:
        node = this.readFall(this.open(reading, 1351));
        break;
      case 116:
        node = this.readMove(this.open(reading, 1352));
        break;
      case 117:
        node = this.readStay(this.open(reading, 1353));
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private readGain(reading: Reading): Made {
    const node: Made = {
      $type: "Gain",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      bound: undefined,
      noMore: false,
      amount: undefined,
    };
    switch (this.kinds[this.at]) {
      case 112:
        this.take(112, reading, 1356);
        break;
      case 113:
        this.take(113, reading, 1358);
        this.take(174, reading, 1359);
        break;
      default:
        throw GIVEN_UP;
    }
    if ((this.kinds[this.at] === 175 || this.kinds[this.at] === 176) && !this.startsNameOnNewLine()) {
      switch (this.kinds[this.at]) {
        case 175:
          this.take(175, reading, 1362);
          switch (this.kinds[this.at]) {
            case 92:
              this.take(92, reading, 1365);
              node.bound = this.taken();
              break;
            case 147:
              this.take(147, reading, 1366);
              node.bound = this.taken();
              break;
            default:
              throw GIVEN_UP;
          }
          break;
        case 176:
          this.take(176, reading, 1369);
          node.noMore = true;
          this.take(151, reading, 1370);
          this.take(152, reading, 1371);
          break;
        default:
          throw GIVEN_UP;
      }
    }
    node.amount = this.adopt(this.readQuantity(this.open(reading, 1373)), node, "amount");
    this.close(reading);
    return node;
  }

  private readFall(reading: Reading): Made {
    const node: Made = {
      $type: "Fall",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      bound: undefined,
      noMore: false,
      amount: undefined,
    };
    switch (this.kinds[this.at]) {
      case 114:
        this.take(114, reading, 1376);
        break;
      case 115:
        this.take(115, reading, 1378);
        this.take(174, reading, 1379);
        break;
      default:
        throw GIVEN_UP;
    }
    if ((this.kinds[this.at] === 175 || this.kinds[this.at] === 176) && !this.startsNameOnNewLine()) {
      switch (this.kinds[this.at]) {
        case 175:
          this.take(175, reading, 1382);
          switch (this.kinds[this.at]) {
            case 92:
              this.take(92, reading, 1385);
              node.bound = this.taken();
              break;
            case 147:
              this.take(147, reading, 1386);
              node.bound = this.taken();
              break;
            default:
              throw GIVEN_UP;
          }
          break;
        case 176:
          this.take(176, reading, 1389);
          node.noMore = true;
          this.take(151, reading, 1390);
          this.take(152, reading, 1391);
          break;
        default:
          throw GIVEN_UP;
      }
    }
    node.amount = this.adopt(this.readQuantity(this.open(reading, 1393)), node, "amount");
    this.close(reading);
    return node;
  }

  private readMove(reading: Reading): Made {
    const node: Made = {
      $type: "Move",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      bound: undefined,
      noMore: false,
      amount: undefined,
    };
    this.take(116, reading, 1395);
    if ((this.kinds[this.at] === 175 || this.kinds[this.at] === 176) && !this.startsNameOnNewLine()) {
      switch (this.kinds[this.at]) {
        case 175:
          this.take(175, reading, 1398);
          switch (this.kinds[this.at]) {
            case 92:
              this.take(92, reading, 1401);
              node.bound = this.taken();
              break;
            case 147:
              this.take(147, reading, 1402);
              node.bound = this.taken();
              break;
            default:
              throw GIVEN_UP;
          }
          break;
        case 176:
          this.take(176, reading, 1405);
          node.noMore = true;
          this.take(151, reading, 1406);
          this.take(152, reading, 1407);
          break;
        default:
          throw GIVEN_UP;
      }
    }
    node.amount = this.adopt(this.readQuantity(this.open(reading, 1409)), node, "amount");
    this.close(reading);
    return node;
  }

  private readStay(reading: Reading): Made {
    const node: Made = {
      $type: "Stay",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      symmetric: false,
      amount: undefined,
    };
    this.take(117, reading, 1411);
    this.take(77, reading, 1412);
    if (this.kinds[this.at] === 194 && !this.startsNameOnNewLine()) {
      this.take(194, reading, 1414);
      node.symmetric = true;
    }
    node.amount = this.adopt(this.readQuantity(this.open(reading, 1416)), node, "amount");
    this.close(reading);
    return node;
  }

  private readAgainst(reading: Reading): Made {
    let node: Made;
    switch (this.decideAgainst1()) {
      case 0:
        node = this.readAgainstUsual(this.open(reading, 1418));
        break;
      case 1:
        node = this.readAgainstBaseline(this.open(reading, 1419));
        break;
      case 2:
        node = this.readAgainstLastSession(this.open(reading, 1420));
        break;
      case 3:
        node = this.readAgainstSession(this.open(reading, 1421));
        break;
      case 4:
        node = this.readAgainstBlock(this.open(reading, 1422));
        break;
      default:
        throw GIVEN_UP;
    }
    this.close(reading);
    return node;
  }

  private decideAgainst1(): number {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 40:
        return 3;
      case 99:
        return 0;
      case 158:
        switch (kinds[at + 1]) {
          case 29:
            return 1;
          case 153:
            return 2;
          default:
            return -1;
        }
      case 201:
        return 4;
      default:
        return -1;
    }
  }

  private readAgainstUsual(reading: Reading): Made {
    const node: Made = {
      $type: "AgainstUsual",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
    };
    this.take(99, reading, 1426);
    this.close(reading);
    return node;
  }

  private readAgainstBaseline(reading: Reading): Made {
    const node: Made = {
      $type: "AgainstBaseline",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
    };
    this.take(158, reading, 1430);
    this.take(29, reading, 1431);
    this.close(reading);
    return node;
  }

  private readAgainstLastSession(reading: Reading): Made {
    const node: Made = {
      $type: "AgainstLastSession",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
    };
    this.take(158, reading, 1435);
    this.take(153, reading, 1436);
    this.take(40, reading, 1437);
    this.close(reading);
    return node;
  }

  private readAgainstSession(reading: Reading): Made {
    const node: Made = {
      $type: "AgainstSession",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      session: undefined,
    };
    this.take(40, reading, 1439);
    node.session = this.reference(node, "session", this.take(201, reading, 1441), this.takenText());
    this.close(reading);
    return node;
  }

  private readAgainstBlock(reading: Reading): Made {
    const node: Made = {
      $type: "AgainstBlock",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      block: undefined,
    };
    node.block = this.reference(node, "block", this.take(201, reading, 1444), this.takenText());
    this.close(reading);
    return node;
  }

  private readLoadCriterion(reading: Reading): Made {
    const node: Made = {
      $type: "LoadCriterion",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      bound: undefined,
      count: undefined,
      fullEffort: false,
      session: false,
    };
    this.take(175, reading, 1447);
    switch (this.kinds[this.at]) {
      case 92:
        this.take(92, reading, 1450);
        node.bound = this.taken();
        break;
      case 147:
        this.take(147, reading, 1451);
        node.bound = this.taken();
        break;
      default:
        throw GIVEN_UP;
    }
    node.count = this.adopt(this.readCount(this.open(reading, 1453)), node, "count");
    if (this.kinds[this.at] === 7 && !this.startsNameOnNewLine()) {
      this.take(7, reading, 1455);
      node.fullEffort = true;
    }
    switch (this.kinds[this.at]) {
      case 59:
        this.take(59, reading, 1457);
        break;
      case 89:
        this.take(89, reading, 1458);
        break;
      default:
        throw GIVEN_UP;
    }
    if (this.kinds[this.at] === 172 && !this.startsNameOnNewLine()) {
      this.take(172, reading, 1461);
      node.session = true;
      this.take(158, reading, 1462);
      this.take(40, reading, 1463);
    }
    this.close(reading);
    return node;
  }

  private readGroupCriterion(reading: Reading): Made {
    const node: Made = {
      $type: "GroupCriterion",
      $container: undefined,
      $containerProperty: undefined,
      $containerIndex: undefined,
      $cstNode: undefined,
      all: false,
      any: false,
      needed: undefined,
      criteria: [],
    };
    switch (this.kinds[this.at]) {
      case 62: case 197: case 200:
        node.needed = this.adopt(this.readCount(this.open(reading, 1471)), node, "needed");
        break;
      case 162:
        this.take(162, reading, 1469);
        node.any = true;
        break;
      case 168:
        this.take(168, reading, 1467);
        node.all = true;
        break;
      default:
        throw GIVEN_UP;
    }
    this.take(171, reading, 1472);
    this.take(186, reading, 1473);
    while (this.decideGroupCriterion1()) {
      this.adoptOneOf(this.readCriterion(this.open(reading, 1475)), node, "criteria", node.criteria);
    }
    this.take(187, reading, 1476);
    this.close(reading);
    return node;
  }

  private decideGroupCriterion1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 52: case 62: case 72: case 81: case 82: case 109: case 110: case 111: case 148: case 149: case 162: case 168: case 175: case 197: case 200:
        return true;
      default:
        return false;
    }
  }
}
