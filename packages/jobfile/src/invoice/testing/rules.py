"""The business rules of EN 16931-1 on an invoice in CII syntax, written a second time from the standard's public rule
identifiers: nothing of the TypeScript is used, amounts are Decimal. Reads XML texts separated by NUL from standard
input and prints, for each, the identifiers of the rules it breaks, a line each."""
import re
import sys
import xml.etree.ElementTree as tree
from decimal import ROUND_HALF_UP, Decimal

NS = {
    "rsm": "urn:un:unece:uncefact:data:standard:CrossIndustryInvoice:100",
    "ram": "urn:un:unece:uncefact:data:standard:ReusableAggregateBusinessInformationEntity:100",
    "udt": "urn:un:unece:uncefact:data:standard:UnqualifiedDataType:100",
}
CENT = Decimal("0.01")


def text(node, path):
    found = None if node is None else node.find(path, NS)
    return None if found is None or found.text is None or found.text.strip() == "" else found.text


def amount(node, path):
    found = text(node, path)
    return None if found is None else Decimal(found)


def rounded(value):
    return value.quantize(CENT, rounding=ROUND_HALF_UP)


def broken(xml):
    out = set()

    def rule(name, holds):
        if not holds:
            out.add(name)

    root = tree.fromstring(xml)
    head = root.find("rsm:ExchangedDocument", NS)
    trade = root.find("rsm:SupplyChainTradeTransaction", NS)
    agreement = trade.find("ram:ApplicableHeaderTradeAgreement", NS)
    settle = trade.find("ram:ApplicableHeaderTradeSettlement", NS)
    sums = settle.find("ram:SpecifiedTradeSettlementHeaderMonetarySummation", NS)
    seller = agreement.find("ram:SellerTradeParty", NS)
    buyer = agreement.find("ram:BuyerTradeParty", NS)

    rule("BR-01", text(root, ".//ram:GuidelineSpecifiedDocumentContextParameter/ram:ID"))
    rule("BR-02", text(head, "ram:ID"))
    date = text(head, "ram:IssueDateTime/udt:DateTimeString")
    rule("BR-03", date and re.fullmatch(r"\d{8}", date))
    rule("BR-04", text(head, "ram:TypeCode"))
    currency = text(settle, "ram:InvoiceCurrencyCode")
    rule("BR-05", currency)
    rule("BR-06", text(seller, "ram:Name"))
    rule("BR-07", text(buyer, "ram:Name"))
    rule("BR-08", seller.find("ram:PostalTradeAddress", NS) is not None)
    rule("BR-09", text(seller, "ram:PostalTradeAddress/ram:CountryID"))
    rule("BR-10", buyer.find("ram:PostalTradeAddress", NS) is not None)
    rule("BR-11", text(buyer, "ram:PostalTradeAddress/ram:CountryID"))

    lines = trade.findall("ram:IncludedSupplyChainTradeLineItem", NS)
    rule("BR-16", lines)
    nets = []
    per = {}
    for line in lines:
        net = amount(line, ".//ram:LineTotalAmount")
        price = amount(line, ".//ram:NetPriceProductTradePrice/ram:ChargeAmount")
        quantity = amount(line, ".//ram:BilledQuantity")
        tax = line.find(".//ram:ApplicableTradeTax", NS)
        category = text(tax, "ram:CategoryCode")
        rate = amount(tax, "ram:RateApplicablePercent")
        rule("BR-21", text(line, ".//ram:LineID"))
        rule("BR-22", quantity is not None)
        unit = line.find(".//ram:BilledQuantity", NS)
        rule("BR-23", unit is not None and unit.get("unitCode"))
        rule("BR-24", net is not None)
        rule("BR-25", text(line, ".//ram:SpecifiedTradeProduct/ram:Name"))
        rule("BR-26", price is not None)
        rule("BR-27", price is not None and price >= 0)
        rule("BR-CO-04", category)
        rule("BR-DEC-23", net is not None and net == net.quantize(CENT))
        rule("LINE", net == rounded(price * quantity))
        nets.append(net)
        key = (category, rate)
        per[key] = per.get(key, Decimal(0)) + net
        if category == "S":
            rule("BR-S-05", rate is not None and rate > 0)
        elif category == "O":
            rule("BR-O-05", rate is None)
        else:
            rule(f"BR-{category}-05", rate == 0)

    shares = settle.findall("ram:ApplicableTradeTax", NS)
    rule("BR-CO-18", shares)
    total_tax = Decimal(0)
    seen = {}
    registrations = {
        node.get("schemeID"): node.text for node in seller.findall("ram:SpecifiedTaxRegistration/ram:ID", NS)
    }
    buyer_vat = any(
        node.get("schemeID") == "VA" for node in buyer.findall("ram:SpecifiedTaxRegistration/ram:ID", NS)
    )
    buyer_legal = text(buyer, "ram:SpecifiedLegalOrganization/ram:ID")
    seller_legal = text(seller, "ram:SpecifiedLegalOrganization/ram:ID")
    for share in shares:
        basis = amount(share, "ram:BasisAmount")
        tax = amount(share, "ram:CalculatedAmount")
        category = text(share, "ram:CategoryCode")
        rate = amount(share, "ram:RateApplicablePercent")
        reason = text(share, "ram:ExemptionReason") or text(share, "ram:ExemptionReasonCode")
        rule("BR-45", basis is not None)
        rule("BR-46", tax is not None)
        rule("BR-47", category)
        rule("BR-48", rate is not None or category == "O")
        rule("BR-CO-17", tax == rounded(basis * (rate or Decimal(0)) / 100))
        rule("BR-DEC-19", basis == basis.quantize(CENT))
        rule("BR-DEC-20", tax == tax.quantize(CENT))
        total_tax += tax
        seen[(category, rate)] = seen.get((category, rate), 0) + 1
        rule(f"BR-{category}-08", basis == per.get((category, rate)))
        if category != "S":
            rule(f"BR-{category}-09", tax == 0)
        if category in ("S", "Z"):
            rule(f"BR-{category}-10", reason is None)
        else:
            rule(f"BR-{category}-10", reason)
        if category == "O":
            rule("BR-O-02", "VA" not in registrations and not buyer_vat)
        else:
            rule(f"BR-{category}-02", registrations)
        if category == "AE":
            rule("BR-AE-02", registrations and (buyer_vat or buyer_legal))
    for (category, rate) in per:
        rule(f"BR-{category}-01", seen.get((category, rate)) == 1)
    if any(category == "O" for category, _ in per):
        rule("BR-O-11", len({category for category, _ in per}) == 1)

    line_total = amount(sums, "ram:LineTotalAmount")
    basis_total = amount(sums, "ram:TaxBasisTotalAmount")
    tax_total = amount(sums, "ram:TaxTotalAmount")
    grand = amount(sums, "ram:GrandTotalAmount")
    due = amount(sums, "ram:DuePayableAmount")
    paid = amount(sums, "ram:TotalPrepaidAmount") or Decimal(0)
    rounding = amount(sums, "ram:RoundingAmount") or Decimal(0)
    for name, value in (("BR-12", line_total), ("BR-13", basis_total), ("BR-14", grand), ("BR-15", due)):
        rule(name, value is not None)
    rule("BR-CO-10", line_total == sum(nets))
    rule("BR-CO-13", basis_total == line_total)
    rule("BR-CO-14", tax_total == total_tax)
    rule("BR-CO-15", grand == basis_total + tax_total)
    rule("BR-CO-16", due == grand - paid + rounding)
    node = sums.find("ram:TaxTotalAmount", NS)
    rule("BR-53", node is not None and node.get("currencyID") == currency)
    terms = settle.find("ram:SpecifiedTradePaymentTerms", NS)
    if due > 0:
        rule(
            "BR-CO-25",
            text(terms, "ram:Description") or text(terms, "ram:DueDateDateTime/udt:DateTimeString"),
        )
    rule("BR-CO-26", seller_legal or "VA" in registrations)
    means = settle.find("ram:SpecifiedTradeSettlementPaymentMeans", NS)
    if means is not None:
        code = text(means, "ram:TypeCode")
        rule("BR-49", code)
        account = means.find("ram:PayeePartyCreditorFinancialAccount", NS)
        if code in ("30", "58"):
            rule("BR-61", text(account, "ram:IBANID") or text(account, "ram:ProprietaryID"))
    return sorted(out)


for document in sys.stdin.buffer.read().split(b"\0"):
    if document.strip():
        print(" ".join(broken(document)))
