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
        case 10: case 12: case 16: case 40: case 46: case 55: case 69: case 71: case 73: case 90: case 117: case 119:
          this.adoptOneOf(this.readDeclaration(this.open(reading, 4)), node, "declarations", node.declarations);
          break;
        case 152:
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
      case 10: case 12: case 16: case 40: case 46: case 55: case 69: case 71: case 73: case 90: case 117: case 119: case 152:
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
    this.take(152, reading, 6);
    this.take(199, reading, 8);
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
      case 90:
        node = this.readDrill(this.open(reading, 14));
        break;
      case 117:
        node = this.readClub(this.open(reading, 12));
        break;
      case 119:
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
    if (this.kinds[this.at] === 181 && !this.startsNameOnNewLine()) {
      this.take(181, reading, 27);
      node.left = this.reference(node, "left", (at = this.open(reading, 29)), this.readWord(at));
      switch (this.kinds[this.at]) {
        case 182:
          this.take(182, reading, 33);
          node.operator = this.taken();
          break;
        case 183:
          this.take(183, reading, 34);
          node.operator = this.taken();
          break;
        default:
          throw GIVEN_UP;
      }
      node.right = this.reference(node, "right", (at = this.open(reading, 36)), this.readWord(at));
    }
    this.take(184, reading, 38);
    while (this.kinds[this.at] === 116) {
      this.adoptOneOf(this.readUnit(this.open(reading, 40)), node, "units", node.units);
    }
    this.take(185, reading, 41);
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
    this.take(116, reading, 43);
    switch (this.kinds[this.at]) {
      case 62: case 121: case 157: case 170: case 188: case 195:
        this.adoptOneOf(this.readUnitName(this.open(reading, 48)), node, "names", node.names);
        while (this.kinds[this.at] === 167) {
          this.take(167, reading, 50);
          this.adoptOneOf(this.readUnitName(this.open(reading, 52)), node, "names", node.names);
        }
        break;
      case 153:
        this.take(153, reading, 45);
        break;
      default:
        throw GIVEN_UP;
    }
    if (this.kinds[this.at] === 181 && !this.startsNameOnNewLine()) {
      this.take(181, reading, 54);
      this.take(198, reading, 56);
      node.factor = this.takenNumber();
      if (this.decideUnit1() && !this.startsNameOnNewLine()) {
        node.base = this.reference(node, "base", (at = this.open(reading, 59)), this.readUnitSign(at));
        if (this.kinds[this.at] === 82 && !this.startsNameOnNewLine()) {
          this.take(82, reading, 62);
          this.take(198, reading, 64);
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
      case 62: case 121: case 157: case 170: case 188: case 195:
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
    this.take(168, reading, 71);
    switch (this.kinds[this.at]) {
      case 62: case 195:
        node.dimension = this.reference(node, "dimension", (at = this.open(reading, 74)), this.readWord(at));
        break;
      case 153:
        this.take(153, reading, 77);
        this.take(169, reading, 78);
        this.adoptOneOf(this.readCategory(this.open(reading, 80)), node, "categories", node.categories);
        while (this.kinds[this.at] === 186) {
          this.take(186, reading, 82);
          this.adoptOneOf(this.readCategory(this.open(reading, 84)), node, "categories", node.categories);
        }
        break;
      default:
        throw GIVEN_UP;
    }
    if (this.kinds[this.at] === 184 && !this.startsNameOnNewLine()) {
      this.take(184, reading, 86);
      while (this.decideMetric1()) {
        this.adoptOneOf(this.readMetricStatement(this.open(reading, 88)), node, "statements", node.statements);
      }
      this.take(185, reading, 89);
    }
    this.close(reading);
    return node;
  }

  private decideMetric1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 17: case 18: case 27: case 28: case 38: case 62: case 83: case 195:
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
      case 62: case 195:
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
      case 83:
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
    this.take(83, reading, 101);
    this.take(170, reading, 102);
    switch (this.kinds[this.at]) {
      case 62: case 121: case 157: case 170: case 188: case 195:
        node.unit = this.reference(node, "unit", (at = this.open(reading, 106)), this.readUnitSign(at));
        break;
      case 153:
        this.take(153, reading, 104);
        break;
      default:
        throw GIVEN_UP;
    }
    this.take(171, reading, 108);
    this.take(198, reading, 110);
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
    if (this.kinds[this.at] === 186 && !this.startsNameOnNewLine()) {
      this.take(186, reading, 116);
      this.take(154, reading, 117);
      this.take(187, reading, 118);
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
    if (this.kinds[this.at] === 186 && !this.startsNameOnNewLine()) {
      this.take(186, reading, 127);
      this.take(154, reading, 128);
      this.take(187, reading, 129);
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
      case 62: case 195:
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
    this.take(155, reading, 145);
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
    this.take(84, reading, 156);
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
    this.take(172, reading, 163);
    this.take(156, reading, 164);
    this.take(56, reading, 165);
    this.take(85, reading, 166);
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
    this.take(117, reading, 168);
    node.name = this.readWord(this.open(reading, 170));
    if (this.kinds[this.at] === 118 && !this.startsNameOnNewLine()) {
      this.take(118, reading, 172);
      this.take(199, reading, 174);
      node.spellings.push(this.takenText());
      while (this.kinds[this.at] === 186) {
        this.take(186, reading, 176);
        this.take(199, reading, 178);
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
    this.take(119, reading, 180);
    this.take(199, reading, 182);
    node.name = this.takenText();
    this.take(184, reading, 183);
    while (this.decidePlan1()) {
      this.adoptOneOf(this.readPlanStatement(this.open(reading, 185)), node, "statements", node.statements);
    }
    this.take(185, reading, 186);
    this.close(reading);
    return node;
  }

  private decidePlan1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 39: case 57: case 58: case 86: case 87: case 89: case 120: case 122: case 129: case 154:
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
      case 86:
        node = this.readNeeds(this.open(reading, 191));
        break;
      case 87:
        node = this.readLoadLimit(this.open(reading, 194));
        break;
      case 89:
        node = this.readBlock(this.open(reading, 196));
        break;
      case 120:
        node = this.readPlanTime(this.open(reading, 190));
        break;
      case 122:
        node = this.readLooksFor(this.open(reading, 195));
        break;
      case 129:
        node = this.readNext(this.open(reading, 197));
        break;
      case 154:
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
    this.take(199, reading, 201);
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
    this.take(154, reading, 203);
    node.clubs.push(this.reference(node, "clubs", (at = this.open(reading, 205)), this.readWord(at)));
    while (this.kinds[this.at] === 186) {
      this.take(186, reading, 208);
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
    this.take(120, reading, 213);
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
    this.take(86, reading, 217);
    node.metrics.push(this.reference(node, "metrics", (at = this.open(reading, 219)), this.readWord(at)));
    while (this.kinds[this.at] === 186) {
      this.take(186, reading, 222);
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
    this.take(199, reading, 229);
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
    this.take(173, reading, 232);
    this.take(198, reading, 234);
    node.level = this.takenNumber();
    this.take(188, reading, 235);
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
    this.take(87, reading, 237);
    this.take(198, reading, 239);
    node.count = this.takenNumber();
    if (this.kinds[this.at] === 7 && !this.startsNameOnNewLine()) {
      this.take(7, reading, 241);
      node.fullEffort = true;
    }
    switch (this.kinds[this.at]) {
      case 59:
        this.take(59, reading, 243);
        break;
      case 88:
        this.take(88, reading, 244);
        break;
      default:
        throw GIVEN_UP;
    }
    if ((this.kinds[this.at] === 170 || this.kinds[this.at] === 187) && !this.startsNameOnNewLine()) {
      switch (this.kinds[this.at]) {
        case 170:
          this.take(170, reading, 249);
          this.take(187, reading, 250);
          break;
        case 187:
          this.take(187, reading, 247);
          break;
        default:
          throw GIVEN_UP;
      }
      switch (this.kinds[this.at]) {
        case 40:
          this.take(40, reading, 253);
          node.period = this.taken();
          break;
        case 121:
          this.take(121, reading, 255);
          node.period = this.taken();
          break;
        case 157:
          this.take(157, reading, 254);
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
    this.take(122, reading, 257);
    this.take(154, reading, 258);
    node.findings.push(this.reference(node, "findings", this.take(199, reading, 260), this.takenText()));
    while (this.kinds[this.at] === 186) {
      this.take(186, reading, 263);
      node.findings.push(this.reference(node, "findings", this.take(199, reading, 265), this.takenText()));
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
    this.take(89, reading, 268);
    this.take(199, reading, 270);
    node.name = this.takenText();
    if (this.kinds[this.at] === 123 && !this.startsNameOnNewLine()) {
      this.take(123, reading, 272);
      node.use = this.adopt(this.readDrillUse(this.open(reading, 274)), node, "use");
    }
    if (this.decideBlock1() && !this.startsNameOnNewLine()) {
      node.kind = this.readBlockKind(this.open(reading, 276));
    }
    if (this.kinds[this.at] === 184 && !this.startsNameOnNewLine()) {
      this.take(184, reading, 278);
      while (this.decideBlock2()) {
        this.adoptOneOf(this.readBlockStatement(this.open(reading, 280)), node, "statements", node.statements);
      }
      this.take(185, reading, 281);
    }
    this.close(reading);
    return node;
  }

  private decideBlock1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 19: case 20: case 29: case 30: case 41: case 42: case 60: case 61: case 125:
        return true;
      default:
        return false;
    }
  }

  private decideBlock2(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 39: case 43: case 44: case 62: case 63: case 66: case 93: case 120: case 158: case 173: case 195: case 198:
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
    node.drill = this.reference(node, "drill", this.take(199, reading, 284), this.takenText());
    if (this.kinds[this.at] === 124 && !this.startsNameOnNewLine()) {
      this.take(124, reading, 287);
      this.adoptOneOf(this.readArgument(this.open(reading, 289)), node, "arguments", node.arguments);
      while (this.kinds[this.at] === 186) {
        this.take(186, reading, 291);
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
    this.take(181, reading, 298);
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
          case 62: case 195:
            return 1;
          case 210:
            return 0;
          default:
            switch (kinds[at + 2]) {
              default:
                return 0;
            }
        }
      case 195:
        switch (kinds[at + 1]) {
          case 62: case 195:
            return 1;
          default:
            return 0;
        }
      case 198:
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
    this.take(90, reading, 310);
    this.take(199, reading, 312);
    node.name = this.takenText();
    if (this.kinds[this.at] === 189 && !this.startsNameOnNewLine()) {
      this.take(189, reading, 314);
      this.adoptOneOf(this.readParameter(this.open(reading, 316)), node, "parameters", node.parameters);
      while (this.kinds[this.at] === 186) {
        this.take(186, reading, 318);
        this.adoptOneOf(this.readParameter(this.open(reading, 320)), node, "parameters", node.parameters);
      }
      this.take(190, reading, 321);
    }
    if (this.decideDrill1() && !this.startsNameOnNewLine()) {
      node.kind = this.readBlockKind(this.open(reading, 323));
    }
    this.take(184, reading, 324);
    while (this.decideDrill2()) {
      this.adoptOneOf(this.readBlockStatement(this.open(reading, 326)), node, "statements", node.statements);
    }
    this.take(185, reading, 327);
    this.close(reading);
    return node;
  }

  private decideDrill1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 19: case 20: case 29: case 30: case 41: case 42: case 60: case 61: case 125:
        return true;
      default:
        return false;
    }
  }

  private decideDrill2(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 39: case 43: case 44: case 62: case 63: case 66: case 93: case 120: case 158: case 173: case 195: case 198:
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
    this.take(191, reading, 331);
    switch (this.kinds[this.at]) {
      case 62: case 195:
        node.dimension = this.reference(node, "dimension", (at = this.open(reading, 336)), this.readWord(at));
        break;
      case 117:
        this.take(117, reading, 334);
        node.isClub = true;
        break;
      default:
        throw GIVEN_UP;
    }
    if (this.kinds[this.at] === 181 && !this.startsNameOnNewLine()) {
      this.take(181, reading, 339);
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
      case 125:
        this.take(125, reading, 348);
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
      case 62: case 173: case 195: case 198:
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
      case 93:
        node = this.readLeaveOut(this.open(reading, 360));
        break;
      case 120:
        node = this.readPlanTime(this.open(reading, 354));
        break;
      case 158:
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
    if (this.kinds[this.at] === 173 && !this.startsNameOnNewLine()) {
      this.take(173, reading, 365);
      node.open = true;
      this.take(91, reading, 366);
    }
    node.count = this.adopt(this.readCount(this.open(reading, 368)), node, "count");
    switch (this.kinds[this.at]) {
      case 92:
        this.take(92, reading, 370);
        break;
      case 126:
        this.take(126, reading, 371);
        break;
      default:
        throw GIVEN_UP;
    }
    if (this.kinds[this.at] === 124 && !this.startsNameOnNewLine()) {
      this.take(124, reading, 373);
      node.club = this.reference(node, "club", (at = this.open(reading, 375)), this.readWord(at));
    }
    if (this.decideShots1() && !this.startsNameOnNewLine()) {
      this.take(173, reading, 378);
      node.effort = this.adopt(this.readCount(this.open(reading, 380)), node, "effort");
      this.take(188, reading, 381);
      this.take(62, reading, 382);
    }
    this.close(reading);
    return node;
  }

  private decideShots1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 173:
        switch (kinds[at + 1]) {
          case 62: case 195: case 198:
            switch (kinds[at + 2]) {
              case 188:
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
      case 127:
        this.take(127, reading, 388);
        node.kind = this.taken();
        break;
      case 128:
        this.take(128, reading, 391);
        node.kind = this.taken();
        break;
      default:
        throw GIVEN_UP;
    }
    this.take(199, reading, 393);
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
    this.take(158, reading, 395);
    this.take(199, reading, 397);
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
    this.take(93, reading, 407);
    this.take(159, reading, 408);
    this.take(92, reading, 409);
    this.take(84, reading, 410);
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
      case 52: case 62: case 72: case 80: case 81: case 107: case 108: case 109: case 146: case 147: case 160: case 166: case 173: case 195: case 198:
        this.adoptOneOf(this.readCriterion(this.open(reading, 422)), node, "criteria", node.criteria);
        break;
      case 184:
        this.take(184, reading, 417);
        while (this.decideSuccess1()) {
          this.adoptOneOf(this.readCriterion(this.open(reading, 419)), node, "criteria", node.criteria);
        }
        this.take(185, reading, 420);
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
      case 52: case 62: case 72: case 80: case 81: case 107: case 108: case 109: case 146: case 147: case 160: case 166: case 173: case 195: case 198:
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
      case 52: case 72: case 80: case 107: case 146:
        switch (kinds[at + 1]) {
          case 62: case 195:
            switch (kinds[at + 2]) {
              case 110: case 111: case 112: case 113: case 114: case 115:
                return 5;
              case 37: case 76: case 82: case 105: case 173:
                return 3;
              default:
                return -1;
            }
          case 169:
            switch (kinds[at + 2]) {
              case 62: case 195:
                switch (kinds[at + 3]) {
                  case 110: case 111: case 112: case 113: case 114: case 115:
                    return 5;
                  case 37: case 76: case 82: case 105: case 173:
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
      case 108: case 109: case 147:
        return 4;
      case 62: case 195:
        switch (kinds[at + 1]) {
          case 110: case 111: case 112: case 113: case 114: case 115:
            return 5;
          case 177: case 178: case 179: case 180:
            switch (kinds[at + 2]) {
              case 15:
                switch (kinds[at + 3]) {
                  case 62: case 195:
                    switch (kinds[at + 4]) {
                      case 110: case 111: case 112: case 113: case 114: case 115:
                        return 5;
                      case 37: case 76: case 82: case 105: case 173:
                        return 3;
                      default:
                        return -1;
                    }
                  case 169:
                    switch (kinds[at + 4]) {
                      case 62: case 195:
                        switch (kinds[at + 5]) {
                          case 110: case 111: case 112: case 113: case 114: case 115:
                            return 5;
                          case 37: case 76: case 82: case 105: case 173:
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
          case 169:
            return 7;
          case 170:
            return 2;
          default:
            return -1;
        }
      case 160: case 166:
        return 7;
      case 81:
        switch (kinds[at + 1]) {
          case 62: case 195: case 198:
            switch (kinds[at + 2]) {
              case 188:
                switch (kinds[at + 3]) {
                  case 62: case 195:
                    return 5;
                  case 169:
                    switch (kinds[at + 4]) {
                      case 62: case 195:
                        switch (kinds[at + 5]) {
                          case 110: case 111: case 112: case 113: case 114: case 115:
                            return 5;
                          case 106:
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
      case 173:
        switch (kinds[at + 1]) {
          case 91: case 145:
            switch (kinds[at + 2]) {
              case 62: case 195: case 198:
                switch (kinds[at + 3]) {
                  case 7: case 59: case 88:
                    return 6;
                  case 92: case 126: case 169:
                    return 0;
                  case 188:
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
      case 198:
        switch (kinds[at + 1]) {
          case 177: case 178: case 179: case 180:
            switch (kinds[at + 2]) {
              case 15:
                switch (kinds[at + 3]) {
                  case 62: case 195:
                    switch (kinds[at + 4]) {
                      case 110: case 111: case 112: case 113: case 114: case 115:
                        return 5;
                      case 37: case 76: case 82: case 105: case 173:
                        return 3;
                      default:
                        return -1;
                    }
                  case 169:
                    switch (kinds[at + 4]) {
                      case 62: case 195:
                        switch (kinds[at + 5]) {
                          case 110: case 111: case 112: case 113: case 114: case 115:
                            return 5;
                          case 37: case 76: case 82: case 105: case 173:
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
          case 169:
            return 7;
          case 170:
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
    this.take(129, reading, 433);
    this.take(184, reading, 434);
    while ((this.kinds[this.at] === 45 || this.kinds[this.at] === 67 || this.kinds[this.at] === 130)) {
      this.adoptOneOf(this.readNextStep(this.open(reading, 436)), node, "steps", node.steps);
    }
    this.take(185, reading, 437);
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
      case 130:
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
    this.take(171, reading, 444);
    node.plan = this.reference(node, "plan", this.take(199, reading, 446), this.takenText());
    if ((this.kinds[this.at] === 22 || this.kinds[this.at] === 132) && !this.startsNameOnNewLine()) {
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
    if ((this.kinds[this.at] === 22 || this.kinds[this.at] === 132) && !this.startsNameOnNewLine()) {
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
    this.take(130, reading, 457);
    this.take(131, reading, 458);
    this.take(171, reading, 459);
    node.plan = this.reference(node, "plan", this.take(199, reading, 461), this.takenText());
    if ((this.kinds[this.at] === 22 || this.kinds[this.at] === 132) && !this.startsNameOnNewLine()) {
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
      case 132:
        this.take(132, reading, 467);
        this.adoptOneOf(this.readNextTest(this.open(reading, 469)), node, "tests", node.tests);
        while (this.kinds[this.at] === 155) {
          this.take(155, reading, 471);
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
      case 94:
        this.take(94, reading, 480);
        node.every = true;
        this.take(133, reading, 481);
        break;
      case 160:
        this.take(160, reading, 484);
        node.any = true;
        this.take(133, reading, 485);
        break;
      case 199:
        node.block = this.reference(node, "block", this.take(199, reading, 487), this.takenText());
        break;
      default:
        throw GIVEN_UP;
    }
    this.take(168, reading, 489);
    node.verdicts.push(this.readVerdictWord(this.open(reading, 491)));
    while (this.kinds[this.at] === 167) {
      this.take(167, reading, 493);
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
      case 161:
        this.take(161, reading, 497);
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
    this.take(199, reading, 504);
    node.name = this.takenText();
    switch (this.kinds[this.at]) {
      case 168:
        this.adoptOneOf(this.readOnlyVariant(this.open(reading, 507)), node, "variants", node.variants);
        break;
      case 184:
        this.take(184, reading, 509);
        while ((this.kinds[this.at] === 154 || this.kinds[this.at] === 168 || this.kinds[this.at] === 173)) {
          this.adoptOneOf(this.readWindowVariant(this.open(reading, 511)), node, "variants", node.variants);
        }
        this.take(185, reading, 512);
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
    this.take(168, reading, 514);
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
    if (this.kinds[this.at] === 154 && !this.startsNameOnNewLine()) {
      this.take(154, reading, 519);
      node.clubs.push(this.reference(node, "clubs", (at = this.open(reading, 521)), this.readWord(at)));
      while (this.kinds[this.at] === 186) {
        this.take(186, reading, 524);
        node.clubs.push(this.reference(node, "clubs", (at = this.open(reading, 526)), this.readWord(at)));
      }
    }
    if (this.kinds[this.at] === 173 && !this.startsNameOnNewLine()) {
      this.take(173, reading, 529);
      this.take(95, reading, 530);
      this.take(199, reading, 532);
      node.level = this.takenText();
    }
    this.take(168, reading, 533);
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
    this.take(199, reading, 539);
    node.name = this.takenText();
    this.take(184, reading, 540);
    while (this.decideFinding1()) {
      this.adoptOneOf(this.readFindingStatement(this.open(reading, 542)), node, "statements", node.statements);
    }
    this.take(185, reading, 543);
    this.close(reading);
    return node;
  }

  private decideFinding1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 47: case 96: case 132: case 136: case 154: case 162:
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
      case 96:
        node = this.readCheckFor(this.open(reading, 548));
        break;
      case 132:
        node = this.readWhen(this.open(reading, 546));
        break;
      case 136:
        node = this.readNote(this.open(reading, 550));
        break;
      case 154:
        node = this.readFindingClubs(this.open(reading, 545));
        break;
      case 162:
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
    this.take(154, reading, 552);
    node.clubs.push(this.reference(node, "clubs", (at = this.open(reading, 554)), this.readWord(at)));
    while (this.kinds[this.at] === 186) {
      this.take(186, reading, 557);
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
    this.take(132, reading, 562);
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
    this.take(199, reading, 568);
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
    this.take(96, reading, 570);
    this.take(199, reading, 572);
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
    this.take(162, reading, 574);
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
    this.take(199, reading, 580);
    node.name = this.takenText();
    this.take(184, reading, 581);
    while ((this.kinds[this.at] === 57 || this.kinds[this.at] === 130 || this.kinds[this.at] === 136)) {
      this.adoptOneOf(this.readCurriculumStatement(this.open(reading, 583)), node, "statements", node.statements);
    }
    this.take(185, reading, 584);
    this.close(reading);
    return node;
  }

  private readCurriculumStatement(reading: Reading): Made {
    let node: Made;
    switch (this.kinds[this.at]) {
      case 57:
        node = this.readCurriculumIntent(this.open(reading, 586));
        break;
      case 130:
        node = this.readCurriculumStep(this.open(reading, 587));
        break;
      case 136:
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
    this.take(199, reading, 592);
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
    this.take(130, reading, 594);
    node.plan = this.reference(node, "plan", this.take(199, reading, 596), this.takenText());
    if (this.kinds[this.at] === 97 && !this.startsNameOnNewLine()) {
      this.take(97, reading, 599);
      node.after.push(this.reference(node, "after", this.take(199, reading, 601), this.takenText()));
      while (this.kinds[this.at] === 186) {
        this.take(186, reading, 604);
        node.after.push(this.reference(node, "after", this.take(199, reading, 606), this.takenText()));
      }
    }
    if (this.kinds[this.at] === 184 && !this.startsNameOnNewLine()) {
      this.take(184, reading, 609);
      while ((this.kinds[this.at] === 70 || this.kinds[this.at] === 134 || this.kinds[this.at] === 136)) {
        this.adoptOneOf(this.readCurriculumStepStatement(this.open(reading, 611)), node, "statements", node.statements);
      }
      this.take(185, reading, 612);
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
      case 134:
        node = this.readGate(this.open(reading, 614));
        break;
      case 136:
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
    this.take(134, reading, 618);
    if (this.kinds[this.at] === 89 && !this.startsNameOnNewLine()) {
      this.take(89, reading, 620);
      node.block = this.reference(node, "block", this.take(199, reading, 622), this.takenText());
      this.take(169, reading, 624);
    }
    node.plan = this.reference(node, "plan", this.take(199, reading, 626), this.takenText());
    this.take(161, reading, 628);
    if (this.kinds[this.at] === 170 && !this.startsNameOnNewLine()) {
      this.take(170, reading, 630);
      this.take(198, reading, 632);
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
    this.take(97, reading, 638);
    this.adoptOneOf(this.readQuantity(this.open(reading, 640)), node, "intervals", node.intervals);
    while (this.kinds[this.at] === 186) {
      this.take(186, reading, 642);
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
    this.take(199, reading, 648);
    node.name = this.takenText();
    this.take(184, reading, 649);
    while (this.decidePlayer1()) {
      this.adoptOneOf(this.readPlayerStatement(this.open(reading, 651)), node, "statements", node.statements);
    }
    this.take(185, reading, 652);
    this.close(reading);
    return node;
  }

  private decidePlayer1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 6: case 8: case 87: case 95: case 98: case 136:
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
      case 87:
        node = this.readLoadLimit(this.open(reading, 657));
        break;
      case 95:
        node = this.readPlayerLevel(this.open(reading, 655));
        break;
      case 98:
        node = this.readUsual(this.open(reading, 656));
        break;
      case 136:
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
    this.take(95, reading, 660);
    this.take(199, reading, 662);
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
    this.take(98, reading, 664);
    node.metric = this.reference(node, "metric", (at = this.open(reading, 666)), this.readWord(at));
    node.amount = this.adopt(this.readQuantity(this.open(reading, 669)), node, "amount");
    if (this.kinds[this.at] === 72 && !this.startsNameOnNewLine()) {
      this.take(72, reading, 671);
      node.spread = this.adopt(this.readQuantity(this.open(reading, 673)), node, "spread");
    }
    if (this.kinds[this.at] === 124 && !this.startsNameOnNewLine()) {
      this.take(124, reading, 675);
      node.club = this.reference(node, "club", (at = this.open(reading, 677)), this.readWord(at));
    }
    if (this.kinds[this.at] === 135 && !this.startsNameOnNewLine()) {
      this.take(135, reading, 680);
      this.take(198, reading, 682);
      node.shots = this.takenNumber();
      this.take(92, reading, 683);
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
    this.take(136, reading, 689);
    this.take(199, reading, 691);
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
    this.take(199, reading, 695);
    node.name = this.takenText();
    this.take(184, reading, 696);
    while (this.decideSource1()) {
      this.adoptOneOf(this.readSourceStatement(this.open(reading, 698)), node, "statements", node.statements);
    }
    this.take(185, reading, 699);
    this.close(reading);
    return node;
  }

  private decideSource1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 24: case 26: case 48: case 74: case 75: case 92: case 136: case 174:
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
      case 74:
        node = this.readHeaderRow(this.open(reading, 705));
        break;
      case 75:
        node = this.readColumn(this.open(reading, 706));
        break;
      case 92:
        node = this.readShotOrder(this.open(reading, 707));
        break;
      case 136:
        node = this.readNote(this.open(reading, 708));
        break;
      case 174:
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
      case 99:
        this.take(99, reading, 713);
        node.mark = this.taken();
        break;
      case 137:
        this.take(137, reading, 716);
        node.mark = this.taken();
        break;
      case 163:
        this.take(163, reading, 715);
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
    this.take(48, reading, 718);
    switch (this.kinds[this.at]) {
      case 99:
        this.take(99, reading, 721);
        node.mark = this.taken();
        break;
      case 100:
        this.take(100, reading, 722);
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
    this.take(26, reading, 724);
    switch (this.kinds[this.at]) {
      case 11:
        this.take(11, reading, 730);
        node.mark = this.taken();
        break;
      case 99:
        this.take(99, reading, 727);
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
    this.take(174, reading, 732);
    this.take(49, reading, 733);
    this.take(168, reading, 734);
    this.take(199, reading, 736);
    node.texts.push(this.takenText());
    while (this.kinds[this.at] === 186) {
      this.take(186, reading, 738);
      this.take(199, reading, 740);
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
    this.take(74, reading, 742);
    this.take(164, reading, 743);
    this.take(198, reading, 745);
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
    this.take(75, reading, 747);
    this.take(199, reading, 749);
    node.header = this.takenText();
    node.content = this.adopt(this.readColumnContent(this.open(reading, 751)), node, "content");
    this.close(reading);
    return node;
  }

  private readColumnContent(reading: Reading): Made {
    let node: Made;
    switch (this.decideColumnContent1()) {
      case 0:
        node = this.readMetricColumn(this.open(reading, 753));
        break;
      case 1:
        node = this.readClubColumn(this.open(reading, 754));
        break;
      case 2:
        node = this.readBlockColumn(this.open(reading, 755));
        break;
      case 3:
        node = this.readPlayerColumn(this.open(reading, 756));
        break;
      case 4:
        node = this.readDateColumn(this.open(reading, 757));
        break;
      case 5:
        node = this.readSessionColumn(this.open(reading, 758));
        break;
      case 6:
        node = this.readTimeColumn(this.open(reading, 759));
        break;
      case 7:
        node = this.readExclusionColumn(this.open(reading, 760));
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
      case 168:
        switch (kinds[at + 1]) {
          case 62: case 195:
            return 0;
          case 40:
            return 5;
          case 71:
            return 3;
          case 89:
            return 2;
          case 117:
            return 1;
          case 120:
            return 6;
          case 138:
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
      spellings: [],
    };
    this.take(168, reading, 762);
    node.metric = this.reference(node, "metric", (at = this.open(reading, 764)), this.readWord(at));
    if (this.kinds[this.at] === 170 && !this.startsNameOnNewLine()) {
      this.take(170, reading, 767);
      node.unit = this.reference(node, "unit", (at = this.open(reading, 769)), this.readUnitSign(at));
    }
    if (this.kinds[this.at] === 27 && !this.startsNameOnNewLine()) {
      this.take(27, reading, 772);
      node.positive = this.reference(node, "positive", (at = this.open(reading, 774)), this.readWord(at));
    }
    if (this.kinds[this.at] === 84 && !this.startsNameOnNewLine()) {
      this.take(84, reading, 777);
      this.adoptOneOf(this.readSpelling(this.open(reading, 779)), node, "spellings", node.spellings);
      while (this.kinds[this.at] === 186) {
        this.take(186, reading, 781);
        this.adoptOneOf(this.readSpelling(this.open(reading, 783)), node, "spellings", node.spellings);
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
    this.take(199, reading, 786);
    node.text = this.takenText();
    this.take(168, reading, 787);
    node.meaning = this.reference(node, "meaning", (at = this.open(reading, 789)), this.readWord(at));
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
    this.take(168, reading, 794);
    this.take(117, reading, 795);
    if (this.kinds[this.at] === 84 && !this.startsNameOnNewLine()) {
      this.take(84, reading, 797);
      this.adoptOneOf(this.readClubSpelling(this.open(reading, 799)), node, "spellings", node.spellings);
      while (this.kinds[this.at] === 186) {
        this.take(186, reading, 801);
        this.adoptOneOf(this.readClubSpelling(this.open(reading, 803)), node, "spellings", node.spellings);
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
    this.take(199, reading, 806);
    node.text = this.takenText();
    this.take(168, reading, 807);
    node.club = this.reference(node, "club", (at = this.open(reading, 809)), this.readWord(at));
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
    this.take(168, reading, 814);
    this.take(89, reading, 815);
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
    this.take(168, reading, 819);
    this.take(71, reading, 820);
    if (this.kinds[this.at] === 84 && !this.startsNameOnNewLine()) {
      this.take(84, reading, 822);
      this.adoptOneOf(this.readPlayerSpelling(this.open(reading, 824)), node, "spellings", node.spellings);
      while (this.kinds[this.at] === 186) {
        this.take(186, reading, 826);
        this.adoptOneOf(this.readPlayerSpelling(this.open(reading, 828)), node, "spellings", node.spellings);
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
    this.take(199, reading, 831);
    node.text = this.takenText();
    this.take(168, reading, 832);
    node.player = this.reference(node, "player", this.take(199, reading, 834), this.takenText());
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
    this.take(168, reading, 839);
    this.take(138, reading, 840);
    if (this.kinds[this.at] === 175 && !this.startsNameOnNewLine()) {
      this.take(175, reading, 842);
      node.order = this.readDateOrder(this.open(reading, 844));
    }
    this.close(reading);
    return node;
  }

  private readDateOrder(reading: Reading): string {
    let text = "";
    switch (this.kinds[this.at]) {
      case 0:
        this.take(0, reading, 846);
        text += this.taken();
        break;
      case 1:
        this.take(1, reading, 847);
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
    this.take(168, reading, 851);
    this.take(40, reading, 852);
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
    this.take(168, reading, 856);
    this.take(120, reading, 857);
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
    this.take(32, reading, 859);
    this.take(132, reading, 860);
    this.take(199, reading, 862);
    node.texts.push(this.takenText());
    while (this.kinds[this.at] === 186) {
      this.take(186, reading, 864);
      this.take(199, reading, 866);
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
    this.take(92, reading, 868);
    this.take(170, reading, 869);
    this.take(102, reading, 870);
    this.take(169, reading, 871);
    this.take(199, reading, 873);
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
    this.take(40, reading, 875);
    this.take(199, reading, 877);
    node.name = this.takenText();
    this.take(184, reading, 878);
    while (this.decideSession1()) {
      this.adoptOneOf(this.readSessionStatement(this.open(reading, 880)), node, "statements", node.statements);
    }
    this.take(185, reading, 881);
    this.close(reading);
    return node;
  }

  private decideSession1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 9: case 12: case 33: case 34: case 35: case 71: case 89: case 119: case 136: case 138: case 139: case 140: case 144:
        return true;
      default:
        return false;
    }
  }

  private readSessionStatement(reading: Reading): Made {
    let node: Made;
    switch (this.kinds[this.at]) {
      case 9:
        node = this.readAirTemperature(this.open(reading, 890));
        break;
      case 12:
        node = this.readSessionInstrument(this.open(reading, 887));
        break;
      case 33:
        node = this.readAirPressure(this.open(reading, 891));
        break;
      case 34:
        node = this.readAltitude(this.open(reading, 892));
        break;
      case 35:
        node = this.readHumidity(this.open(reading, 893));
        break;
      case 71:
        node = this.readSessionPlayer(this.open(reading, 884));
        break;
      case 89:
        node = this.readBlockStart(this.open(reading, 888));
        break;
      case 119:
        node = this.readSessionPlan(this.open(reading, 883));
        break;
      case 136:
        node = this.readNote(this.open(reading, 895));
        break;
      case 138:
        node = this.readSessionDate(this.open(reading, 885));
        break;
      case 139:
        node = this.readSessionData(this.open(reading, 886));
        break;
      case 140:
        node = this.readWind(this.open(reading, 889));
        break;
      case 144:
        node = this.readBall(this.open(reading, 894));
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
    this.take(119, reading, 897);
    node.plan = this.reference(node, "plan", this.take(199, reading, 899), this.takenText());
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
    this.take(71, reading, 902);
    node.player = this.reference(node, "player", this.take(199, reading, 904), this.takenText());
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
    this.take(138, reading, 907);
    this.take(196, reading, 909);
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
    this.take(139, reading, 911);
    this.take(199, reading, 913);
    node.path = this.takenText();
    this.take(123, reading, 914);
    node.source = this.reference(node, "source", this.take(199, reading, 916), this.takenText());
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
    this.take(12, reading, 919);
    node.instrument = this.reference(node, "instrument", this.take(199, reading, 921), this.takenText());
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
    this.take(89, reading, 924);
    node.block = this.reference(node, "block", this.take(199, reading, 926), this.takenText());
    this.take(123, reading, 928);
    switch (this.kinds[this.at]) {
      case 164:
        this.take(164, reading, 931);
        this.take(198, reading, 933);
        node.row = this.takenNumber();
        break;
      case 197:
        this.take(197, reading, 935);
        node.time = this.taken();
        break;
      default:
        throw GIVEN_UP;
    }
    if (this.kinds[this.at] === 169 && !this.startsNameOnNewLine()) {
      this.take(169, reading, 937);
      this.take(199, reading, 939);
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
    this.take(140, reading, 941);
    switch (this.kinds[this.at]) {
      case 62: case 195: case 198:
        this.adoptOneOf(this.readWindPart(this.open(reading, 947)), node, "parts", node.parts);
        if (this.kinds[this.at] === 155 && !this.startsNameOnNewLine()) {
          this.take(155, reading, 949);
          this.adoptOneOf(this.readWindPart(this.open(reading, 951)), node, "parts", node.parts);
        }
        break;
      case 141:
        this.take(141, reading, 944);
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
    node.speed = this.adopt(this.readQuantity(this.open(reading, 954)), node, "speed");
    switch (this.kinds[this.at]) {
      case 2:
        this.take(2, reading, 959);
        node.side = this.taken();
        break;
      case 3:
        this.take(3, reading, 960);
        node.side = this.taken();
        break;
      case 142:
        this.take(142, reading, 957);
        node.side = this.taken();
        break;
      case 143:
        this.take(143, reading, 958);
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
    this.take(9, reading, 962);
    if (this.kinds[this.at] === 103 && !this.startsNameOnNewLine()) {
      this.take(103, reading, 964);
      node.minus = true;
    }
    node.quantity = this.adopt(this.readQuantity(this.open(reading, 966)), node, "quantity");
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
    this.take(33, reading, 968);
    node.quantity = this.adopt(this.readQuantity(this.open(reading, 970)), node, "quantity");
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
    this.take(34, reading, 972);
    node.quantity = this.adopt(this.readQuantity(this.open(reading, 974)), node, "quantity");
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
    this.take(35, reading, 976);
    this.take(198, reading, 978);
    node.share = this.takenNumber();
    this.take(188, reading, 979);
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
    this.take(144, reading, 981);
    this.take(199, reading, 983);
    node.name = this.takenText();
    if (this.kinds[this.at] === 50 && !this.startsNameOnNewLine()) {
      this.take(50, reading, 985);
      this.take(198, reading, 987);
      node.share = this.takenNumber();
      this.take(188, reading, 988);
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
    this.take(12, reading, 990);
    this.take(199, reading, 992);
    node.name = this.takenText();
    this.take(184, reading, 993);
    while ((this.kinds[this.at] === 36 || this.kinds[this.at] === 104 || this.kinds[this.at] === 136)) {
      this.adoptOneOf(this.readInstrumentStatement(this.open(reading, 995)), node, "statements", node.statements);
    }
    this.take(185, reading, 996);
    this.close(reading);
    return node;
  }

  private readInstrumentStatement(reading: Reading): Made {
    let node: Made;
    switch (this.kinds[this.at]) {
      case 36:
        node = this.readCoverage(this.open(reading, 999));
        break;
      case 104:
        node = this.readUncertainty(this.open(reading, 998));
        break;
      case 136:
        node = this.readNote(this.open(reading, 1000));
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
    this.take(104, reading, 1002);
    node.metric = this.reference(node, "metric", (at = this.open(reading, 1004)), this.readWord(at));
    this.take(76, reading, 1006);
    this.adoptOneOf(this.readUncertaintyPart(this.open(reading, 1008)), node, "parts", node.parts);
    if (this.kinds[this.at] === 155 && !this.startsNameOnNewLine()) {
      this.take(155, reading, 1010);
      this.adoptOneOf(this.readUncertaintyPart(this.open(reading, 1012)), node, "parts", node.parts);
    }
    if (this.kinds[this.at] === 154 && !this.startsNameOnNewLine()) {
      this.take(154, reading, 1014);
      node.clubs.push(this.reference(node, "clubs", (at = this.open(reading, 1016)), this.readWord(at)));
      while (this.kinds[this.at] === 186) {
        this.take(186, reading, 1019);
        node.clubs.push(this.reference(node, "clubs", (at = this.open(reading, 1021)), this.readWord(at)));
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
    node.quantity = this.adopt(this.readQuantity(this.open(reading, 1025)), node, "quantity");
    switch (this.kinds[this.at]) {
      case 13:
        this.take(13, reading, 1029);
        node.kind = this.taken();
        break;
      case 61:
        this.take(61, reading, 1028);
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
    this.take(36, reading, 1031);
    switch (this.kinds[this.at]) {
      case 77:
        this.take(77, reading, 1038);
        this.take(198, reading, 1040);
        node.factor = this.takenNumber();
        break;
      case 78:
        this.take(78, reading, 1042);
        node.limits = true;
        break;
      case 198:
        this.take(198, reading, 1035);
        node.share = this.takenNumber();
        this.take(188, reading, 1036);
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
        this.take(62, reading, 1045);
        text += this.taken();
        break;
      case 195:
        this.take(195, reading, 1044);
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
      case 62: case 195:
        text += this.readWord(this.open(reading, 1047));
        break;
      case 121:
        this.take(121, reading, 1051);
        text += this.taken();
        break;
      case 157:
        this.take(157, reading, 1050);
        text += this.taken();
        break;
      case 170:
        this.take(170, reading, 1048);
        text += this.taken();
        break;
      case 188:
        this.take(188, reading, 1049);
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
      case 62: case 195:
        node.parameter = this.reference(node, "parameter", (at = this.open(reading, 1065)), this.readWord(at));
        if ((this.kinds[this.at] === 62 || this.kinds[this.at] === 195) && !this.startsNameOnNewLine()) {
          node.direction = this.reference(node, "direction", (at = this.open(reading, 1068)), this.readWord(at));
        }
        break;
      case 198:
        this.take(198, reading, 1055);
        node.value = this.takenNumber();
        if (this.decideQuantity1() && !this.startsNameOnNewLine()) {
          node.unit = this.reference(node, "unit", (at = this.open(reading, 1058)), this.readUnitSign(at));
          if ((this.kinds[this.at] === 62 || this.kinds[this.at] === 195) && !this.startsNameOnNewLine()) {
            node.direction = this.reference(node, "direction", (at = this.open(reading, 1061)), this.readWord(at));
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
      case 62: case 121: case 157: case 170: case 188: case 195:
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
      case 62: case 195:
        node.parameter = this.reference(node, "parameter", (at = this.open(reading, 1074)), this.readWord(at));
        break;
      case 198:
        this.take(198, reading, 1072);
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
    this.adoptOneOf(this.readConjunction(this.open(reading, 1078)), node, "alternatives", node.alternatives);
    while (this.kinds[this.at] === 167) {
      this.take(167, reading, 1080);
      this.adoptOneOf(this.readConjunction(this.open(reading, 1082)), node, "alternatives", node.alternatives);
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
    this.adoptOneOf(this.readShotTest(this.open(reading, 1085)), node, "tests", node.tests);
    while (this.kinds[this.at] === 155) {
      this.take(155, reading, 1087);
      this.adoptOneOf(this.readShotTest(this.open(reading, 1089)), node, "tests", node.tests);
    }
    this.close(reading);
    return node;
  }

  private readShotTest(reading: Reading): Made {
    let node: Made;
    switch (this.decideShotTest1()) {
      case 0:
        node = this.readNumberTest(this.open(reading, 1091));
        break;
      case 1:
        node = this.readCategoryTest(this.open(reading, 1092));
        break;
      case 2:
        node = this.readWindowTest(this.open(reading, 1093));
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
      case 51: case 79:
        return 2;
      case 62: case 195:
        switch (kinds[at + 1]) {
          case 37: case 76: case 82: case 105: case 173:
            return 0;
          case 168:
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
    node.metric = this.reference(node, "metric", (at = this.open(reading, 1096)), this.readWord(at));
    node.range = this.adopt(this.readRange(this.open(reading, 1099)), node, "range");
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
    node.metric = this.reference(node, "metric", (at = this.open(reading, 1102)), this.readWord(at));
    this.take(168, reading, 1104);
    node.categories.push(this.reference(node, "categories", (at = this.open(reading, 1106)), this.readWord(at)));
    while (this.decideCategoryTest1()) {
      this.take(167, reading, 1109);
      node.categories.push(this.reference(node, "categories", (at = this.open(reading, 1111)), this.readWord(at)));
    }
    this.close(reading);
    return node;
  }

  private decideCategoryTest1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 167:
        switch (kinds[at + 1]) {
          case 62: case 195:
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
        this.take(51, reading, 1117);
        break;
      case 79:
        this.take(79, reading, 1116);
        node.inside = true;
        break;
      default:
        throw GIVEN_UP;
    }
    node.window = this.reference(node, "window", this.take(199, reading, 1119), this.takenText());
    this.close(reading);
    return node;
  }

  private readRange(reading: Reading): Made {
    let node: Made;
    switch (this.decideRange1()) {
      case 0:
        node = this.readWithin(this.open(reading, 1122));
        break;
      case 1:
        node = this.readBetween(this.open(reading, 1123));
        break;
      case 2:
        node = this.readAtLeast(this.open(reading, 1124));
        break;
      case 3:
        node = this.readAtMost(this.open(reading, 1125));
        break;
      case 4:
        node = this.readBelow(this.open(reading, 1126));
        break;
      case 5:
        node = this.readAbove(this.open(reading, 1127));
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
      case 76:
        return 0;
      case 82:
        return 5;
      case 105:
        return 4;
      case 173:
        switch (kinds[at + 1]) {
          case 91:
            return 2;
          case 145:
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
    this.take(76, reading, 1129);
    if ((this.kinds[this.at] === 165 || this.kinds[this.at] === 192) && !this.startsNameOnNewLine()) {
      switch (this.kinds[this.at]) {
        case 165:
          this.take(165, reading, 1134);
          node.symmetric = true;
          break;
        case 192:
          this.take(192, reading, 1132);
          node.symmetric = true;
          break;
        default:
          throw GIVEN_UP;
      }
    }
    node.tolerance = this.adopt(this.readQuantity(this.open(reading, 1136)), node, "tolerance");
    if (this.kinds[this.at] === 169 && !this.startsNameOnNewLine()) {
      this.take(169, reading, 1138);
      node.centre = this.adopt(this.readQuantity(this.open(reading, 1140)), node, "centre");
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
    this.take(37, reading, 1142);
    node.low = this.adopt(this.readQuantity(this.open(reading, 1144)), node, "low");
    this.take(155, reading, 1145);
    node.high = this.adopt(this.readQuantity(this.open(reading, 1147)), node, "high");
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
    this.take(173, reading, 1149);
    this.take(91, reading, 1150);
    node.limit = this.adopt(this.readQuantity(this.open(reading, 1152)), node, "limit");
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
    this.take(173, reading, 1154);
    this.take(145, reading, 1155);
    node.limit = this.adopt(this.readQuantity(this.open(reading, 1157)), node, "limit");
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
    this.take(105, reading, 1159);
    node.limit = this.adopt(this.readQuantity(this.open(reading, 1161)), node, "limit");
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
    this.take(82, reading, 1163);
    node.limit = this.adopt(this.readQuantity(this.open(reading, 1165)), node, "limit");
    this.close(reading);
    return node;
  }

  private readSubject(reading: Reading): Made {
    let node: Made;
    switch (this.kinds[this.at]) {
      case 51: case 79:
        node = this.readInWindow(this.open(reading, 1169));
        break;
      case 124:
        node = this.readMeeting(this.open(reading, 1168));
        break;
      case 176:
        node = this.readOnTarget(this.open(reading, 1167));
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
    this.take(176, reading, 1173);
    this.take(66, reading, 1174);
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
    this.take(124, reading, 1176);
    node.condition = this.adopt(this.readCondition(this.open(reading, 1178)), node, "condition");
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
    node.test = this.adopt(this.readWindowTest(this.open(reading, 1180)), node, "test");
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
    this.take(173, reading, 1182);
    this.take(198, reading, 1184);
    node.level = this.takenNumber();
    this.take(188, reading, 1185);
    this.take(14, reading, 1186);
    this.close(reading);
    return node;
  }

  private readExpression(reading: Reading): Made {
    let node: Made;
    node = this.readBinaryExpression(this.open(reading, 1187));
    this.close(reading);
    return node;
  }

  private readBinaryExpression(reading: Reading): Made {
    const operands = [this.linked(this.readOperand(this.open(reading, 1188)))];
    const operators: string[] = [];
    while (this.decideBinaryExpression1()) {
      switch (this.kinds[this.at]) {
        case 182:
          this.take(182, reading, 1189);
          break;
        case 183:
          this.take(183, reading, 1189);
          break;
        case 193:
          this.take(193, reading, 1189);
          break;
        case 194:
          this.take(194, reading, 1189);
          break;
        default:
          throw GIVEN_UP;
      }
      operators.push(this.taken());
      operands.push(this.linked(this.readOperand(this.open(reading, 1188))));
    }
    return this.chain("BinaryExpression", operands, operators, {"*":0,"/":0,"+":1,"-":1}, reading);
  }

  private decideBinaryExpression1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 182: case 183: case 193: case 194:
        return true;
      default:
        return false;
    }
  }

  private readOperand(reading: Reading): Made {
    let node: Made;
    switch (this.decideOperand1()) {
      case 0:
        node = this.readMetricOperand(this.open(reading, 1191));
        break;
      case 1:
        node = this.readQuantityOperand(this.open(reading, 1192));
        break;
      case 2:
        this.take(189, reading, 1194);
        node = this.readExpression(this.open(reading, 1195));
        this.take(190, reading, 1196);
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
          case 62: case 195:
            return 1;
          case 210:
            return 0;
          default:
            switch (kinds[at + 2]) {
              default:
                return 0;
            }
        }
      case 189:
        return 2;
      case 195:
        switch (kinds[at + 1]) {
          case 62: case 195:
            return 1;
          default:
            return 0;
        }
      case 198:
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
    node.metric = this.reference(node, "metric", (at = this.open(reading, 1198)), this.readWord(at));
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
    node.quantity = this.adopt(this.readQuantity(this.open(reading, 1201)), node, "quantity");
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
    this.take(173, reading, 1203);
    switch (this.kinds[this.at]) {
      case 91:
        this.take(91, reading, 1206);
        node.bound = this.taken();
        break;
      case 145:
        this.take(145, reading, 1207);
        node.bound = this.taken();
        break;
      default:
        throw GIVEN_UP;
    }
    node.count = this.adopt(this.readCount(this.open(reading, 1209)), node, "count");
    if (this.kinds[this.at] === 169 && !this.startsNameOnNewLine()) {
      this.take(169, reading, 1211);
      node.outOf = this.adopt(this.readCount(this.open(reading, 1213)), node, "outOf");
    }
    switch (this.kinds[this.at]) {
      case 92:
        this.take(92, reading, 1215);
        break;
      case 126:
        this.take(126, reading, 1216);
        break;
      default:
        throw GIVEN_UP;
    }
    node.subject = this.adopt(this.readSubject(this.open(reading, 1218)), node, "subject");
    if (this.decideCountCriterion1() && !this.startsNameOnNewLine()) {
      node.confidence = this.adopt(this.readConfidence(this.open(reading, 1220)), node, "confidence");
    }
    this.close(reading);
    return node;
  }

  private decideCountCriterion1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 173:
        switch (kinds[at + 1]) {
          case 198:
            switch (kinds[at + 2]) {
              case 188:
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
    this.take(173, reading, 1222);
    switch (this.kinds[this.at]) {
      case 91:
        this.take(91, reading, 1225);
        node.bound = this.taken();
        break;
      case 145:
        this.take(145, reading, 1226);
        node.bound = this.taken();
        break;
      default:
        throw GIVEN_UP;
    }
    node.share = this.adopt(this.readCount(this.open(reading, 1228)), node, "share");
    this.take(188, reading, 1229);
    this.take(169, reading, 1230);
    this.take(92, reading, 1231);
    node.subject = this.adopt(this.readSubject(this.open(reading, 1233)), node, "subject");
    if (this.decideShareCriterion1() && !this.startsNameOnNewLine()) {
      node.confidence = this.adopt(this.readConfidence(this.open(reading, 1235)), node, "confidence");
    }
    this.close(reading);
    return node;
  }

  private decideShareCriterion1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 173:
        switch (kinds[at + 1]) {
          case 198:
            switch (kinds[at + 2]) {
              case 188:
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
    node.length = this.adopt(this.readCount(this.open(reading, 1238)), node, "length");
    this.take(170, reading, 1239);
    this.take(187, reading, 1240);
    this.take(164, reading, 1241);
    node.subject = this.adopt(this.readSubject(this.open(reading, 1243)), node, "subject");
    if (this.decideRunCriterion1() && !this.startsNameOnNewLine()) {
      node.confidence = this.adopt(this.readConfidence(this.open(reading, 1245)), node, "confidence");
    }
    this.close(reading);
    return node;
  }

  private decideRunCriterion1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 173:
        switch (kinds[at + 1]) {
          case 198:
            switch (kinds[at + 2]) {
              case 188:
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
      case 52: case 62: case 72: case 80: case 107: case 146: case 195: case 198:
        node = this.readSingleStatistic(this.open(reading, 1247));
        break;
      case 81:
        node = this.readSpanStatistic(this.open(reading, 1248));
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
    node.statistic = this.adopt(this.readStatistic(this.open(reading, 1251)), node, "statistic");
    if (this.kinds[this.at] === 169 && !this.startsNameOnNewLine()) {
      this.take(169, reading, 1252);
    }
    node.metric = this.reference(node, "metric", (at = this.open(reading, 1254)), this.readWord(at));
    node.range = this.adopt(this.readRange(this.open(reading, 1257)), node, "range");
    if (this.decideSingleStatistic1() && !this.startsNameOnNewLine()) {
      node.confidence = this.adopt(this.readConfidence(this.open(reading, 1259)), node, "confidence");
    }
    this.close(reading);
    return node;
  }

  private decideSingleStatistic1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 173:
        switch (kinds[at + 1]) {
          case 198:
            switch (kinds[at + 2]) {
              case 188:
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
    node.statistic = this.adopt(this.readSpan(this.open(reading, 1262)), node, "statistic");
    this.take(169, reading, 1263);
    node.metric = this.reference(node, "metric", (at = this.open(reading, 1265)), this.readWord(at));
    this.take(106, reading, 1267);
    node.range = this.adopt(this.readRange(this.open(reading, 1269)), node, "range");
    if (this.decideSpanStatistic1() && !this.startsNameOnNewLine()) {
      node.confidence = this.adopt(this.readConfidence(this.open(reading, 1271)), node, "confidence");
    }
    this.close(reading);
    return node;
  }

  private decideSpanStatistic1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 173:
        switch (kinds[at + 1]) {
          case 198:
            switch (kinds[at + 2]) {
              case 188:
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
      case 52: case 72: case 80: case 107: case 146:
        node = this.readSummary(this.open(reading, 1273));
        break;
      case 62: case 195: case 198:
        node = this.readPercentile(this.open(reading, 1274));
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
        this.take(52, reading, 1277);
        node.name = this.taken();
        break;
      case 72:
        this.take(72, reading, 1279);
        node.name = this.taken();
        break;
      case 80:
        this.take(80, reading, 1278);
        node.name = this.taken();
        break;
      case 107:
        this.take(107, reading, 1281);
        node.name = this.taken();
        break;
      case 146:
        this.take(146, reading, 1280);
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
    node.share = this.adopt(this.readCount(this.open(reading, 1284)), node, "share");
    switch (this.kinds[this.at]) {
      case 177:
        this.take(177, reading, 1286);
        break;
      case 178:
        this.take(178, reading, 1287);
        break;
      case 179:
        this.take(179, reading, 1288);
        break;
      case 180:
        this.take(180, reading, 1289);
        break;
      default:
        throw GIVEN_UP;
    }
    this.take(15, reading, 1290);
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
    this.take(81, reading, 1292);
    node.share = this.adopt(this.readCount(this.open(reading, 1294)), node, "share");
    this.take(188, reading, 1295);
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
      case 108: case 109:
        switch (this.kinds[this.at]) {
          case 108:
            this.take(108, reading, 1303);
            node.measure = this.taken();
            break;
          case 109:
            this.take(109, reading, 1304);
            node.measure = this.taken();
            break;
          default:
            throw GIVEN_UP;
        }
        this.take(148, reading, 1305);
        break;
      case 147:
        this.take(147, reading, 1299);
        node.measure = this.taken();
        break;
      default:
        throw GIVEN_UP;
    }
    this.take(169, reading, 1306);
    this.take(156, reading, 1307);
    node.share = this.adopt(this.readCount(this.open(reading, 1309)), node, "share");
    this.take(188, reading, 1310);
    this.take(53, reading, 1311);
    this.take(169, reading, 1312);
    node.first = this.reference(node, "first", (at = this.open(reading, 1314)), this.readWord(at));
    this.take(155, reading, 1316);
    node.second = this.reference(node, "second", (at = this.open(reading, 1318)), this.readWord(at));
    node.range = this.adopt(this.readRange(this.open(reading, 1321)), node, "range");
    if (this.decideEllipseCriterion1() && !this.startsNameOnNewLine()) {
      node.confidence = this.adopt(this.readConfidence(this.open(reading, 1323)), node, "confidence");
    }
    this.close(reading);
    return node;
  }

  private decideEllipseCriterion1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 173:
        switch (kinds[at + 1]) {
          case 198:
            switch (kinds[at + 2]) {
              case 188:
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
      node.statistic = this.adopt(this.readChangedStatistic(this.open(reading, 1327)), node, "statistic");
      if (this.kinds[this.at] === 169 && !this.startsNameOnNewLine()) {
        this.take(169, reading, 1328);
      }
    }
    node.metric = this.reference(node, "metric", (at = this.open(reading, 1330)), this.readWord(at));
    node.movement = this.adopt(this.readMovement(this.open(reading, 1333)), node, "movement");
    this.take(54, reading, 1334);
    node.against = this.adopt(this.readAgainst(this.open(reading, 1336)), node, "against");
    if (this.decideChangeCriterion2() && !this.startsNameOnNewLine()) {
      node.confidence = this.adopt(this.readConfidence(this.open(reading, 1338)), node, "confidence");
    }
    this.close(reading);
    return node;
  }

  private decideChangeCriterion1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 52: case 72: case 80: case 81: case 107: case 146: case 198:
        return true;
      case 62: case 195:
        switch (kinds[at + 1]) {
          case 177: case 178: case 179: case 180:
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
      case 173:
        switch (kinds[at + 1]) {
          case 198:
            switch (kinds[at + 2]) {
              case 188:
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
      case 52: case 72: case 80: case 107: case 146:
        node = this.readSummary(this.open(reading, 1340));
        break;
      case 62: case 195: case 198:
        node = this.readPercentile(this.open(reading, 1341));
        break;
      case 81:
        node = this.readSpan(this.open(reading, 1342));
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
      case 110: case 111:
        node = this.readGain(this.open(reading, 1344));
        break;
      case 112: case 113:
        node = this.readFall(this.open(reading, 1345));
        break;
      case 114:
        node = this.readMove(this.open(reading, 1346));
        break;
      case 115:
        node = this.readStay(this.open(reading, 1347));
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
      case 110:
        this.take(110, reading, 1350);
        break;
      case 111:
        this.take(111, reading, 1352);
        this.take(172, reading, 1353);
        break;
      default:
        throw GIVEN_UP;
    }
    if ((this.kinds[this.at] === 173 || this.kinds[this.at] === 174) && !this.startsNameOnNewLine()) {
      switch (this.kinds[this.at]) {
        case 173:
          this.take(173, reading, 1356);
          switch (this.kinds[this.at]) {
            case 91:
              this.take(91, reading, 1359);
              node.bound = this.taken();
              break;
            case 145:
              this.take(145, reading, 1360);
              node.bound = this.taken();
              break;
            default:
              throw GIVEN_UP;
          }
          break;
        case 174:
          this.take(174, reading, 1363);
          node.noMore = true;
          this.take(149, reading, 1364);
          this.take(150, reading, 1365);
          break;
        default:
          throw GIVEN_UP;
      }
    }
    node.amount = this.adopt(this.readQuantity(this.open(reading, 1367)), node, "amount");
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
      case 112:
        this.take(112, reading, 1370);
        break;
      case 113:
        this.take(113, reading, 1372);
        this.take(172, reading, 1373);
        break;
      default:
        throw GIVEN_UP;
    }
    if ((this.kinds[this.at] === 173 || this.kinds[this.at] === 174) && !this.startsNameOnNewLine()) {
      switch (this.kinds[this.at]) {
        case 173:
          this.take(173, reading, 1376);
          switch (this.kinds[this.at]) {
            case 91:
              this.take(91, reading, 1379);
              node.bound = this.taken();
              break;
            case 145:
              this.take(145, reading, 1380);
              node.bound = this.taken();
              break;
            default:
              throw GIVEN_UP;
          }
          break;
        case 174:
          this.take(174, reading, 1383);
          node.noMore = true;
          this.take(149, reading, 1384);
          this.take(150, reading, 1385);
          break;
        default:
          throw GIVEN_UP;
      }
    }
    node.amount = this.adopt(this.readQuantity(this.open(reading, 1387)), node, "amount");
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
    this.take(114, reading, 1389);
    if ((this.kinds[this.at] === 173 || this.kinds[this.at] === 174) && !this.startsNameOnNewLine()) {
      switch (this.kinds[this.at]) {
        case 173:
          this.take(173, reading, 1392);
          switch (this.kinds[this.at]) {
            case 91:
              this.take(91, reading, 1395);
              node.bound = this.taken();
              break;
            case 145:
              this.take(145, reading, 1396);
              node.bound = this.taken();
              break;
            default:
              throw GIVEN_UP;
          }
          break;
        case 174:
          this.take(174, reading, 1399);
          node.noMore = true;
          this.take(149, reading, 1400);
          this.take(150, reading, 1401);
          break;
        default:
          throw GIVEN_UP;
      }
    }
    node.amount = this.adopt(this.readQuantity(this.open(reading, 1403)), node, "amount");
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
    this.take(115, reading, 1405);
    this.take(76, reading, 1406);
    if (this.kinds[this.at] === 192 && !this.startsNameOnNewLine()) {
      this.take(192, reading, 1408);
      node.symmetric = true;
    }
    node.amount = this.adopt(this.readQuantity(this.open(reading, 1410)), node, "amount");
    this.close(reading);
    return node;
  }

  private readAgainst(reading: Reading): Made {
    let node: Made;
    switch (this.decideAgainst1()) {
      case 0:
        node = this.readAgainstUsual(this.open(reading, 1412));
        break;
      case 1:
        node = this.readAgainstBaseline(this.open(reading, 1413));
        break;
      case 2:
        node = this.readAgainstLastSession(this.open(reading, 1414));
        break;
      case 3:
        node = this.readAgainstSession(this.open(reading, 1415));
        break;
      case 4:
        node = this.readAgainstBlock(this.open(reading, 1416));
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
      case 98:
        return 0;
      case 156:
        switch (kinds[at + 1]) {
          case 29:
            return 1;
          case 151:
            return 2;
          default:
            return -1;
        }
      case 199:
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
    this.take(98, reading, 1420);
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
    this.take(156, reading, 1424);
    this.take(29, reading, 1425);
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
    this.take(156, reading, 1429);
    this.take(151, reading, 1430);
    this.take(40, reading, 1431);
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
    this.take(40, reading, 1433);
    node.session = this.reference(node, "session", this.take(199, reading, 1435), this.takenText());
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
    node.block = this.reference(node, "block", this.take(199, reading, 1438), this.takenText());
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
    this.take(173, reading, 1441);
    switch (this.kinds[this.at]) {
      case 91:
        this.take(91, reading, 1444);
        node.bound = this.taken();
        break;
      case 145:
        this.take(145, reading, 1445);
        node.bound = this.taken();
        break;
      default:
        throw GIVEN_UP;
    }
    node.count = this.adopt(this.readCount(this.open(reading, 1447)), node, "count");
    if (this.kinds[this.at] === 7 && !this.startsNameOnNewLine()) {
      this.take(7, reading, 1449);
      node.fullEffort = true;
    }
    switch (this.kinds[this.at]) {
      case 59:
        this.take(59, reading, 1451);
        break;
      case 88:
        this.take(88, reading, 1452);
        break;
      default:
        throw GIVEN_UP;
    }
    if (this.kinds[this.at] === 170 && !this.startsNameOnNewLine()) {
      this.take(170, reading, 1455);
      node.session = true;
      this.take(156, reading, 1456);
      this.take(40, reading, 1457);
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
      case 62: case 195: case 198:
        node.needed = this.adopt(this.readCount(this.open(reading, 1465)), node, "needed");
        break;
      case 160:
        this.take(160, reading, 1463);
        node.any = true;
        break;
      case 166:
        this.take(166, reading, 1461);
        node.all = true;
        break;
      default:
        throw GIVEN_UP;
    }
    this.take(169, reading, 1466);
    this.take(184, reading, 1467);
    while (this.decideGroupCriterion1()) {
      this.adoptOneOf(this.readCriterion(this.open(reading, 1469)), node, "criteria", node.criteria);
    }
    this.take(185, reading, 1470);
    this.close(reading);
    return node;
  }

  private decideGroupCriterion1(): boolean {
    const { kinds, at } = this;
    switch (kinds[at]) {
      case 52: case 62: case 72: case 80: case 81: case 107: case 108: case 109: case 146: case 147: case 160: case 166: case 173: case 195: case 198:
        return true;
      default:
        return false;
    }
  }
}
